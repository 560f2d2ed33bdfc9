package fairboil.ingest.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Times with year, month and day in columns of their own, and hours, minutes, seconds in others.
 */
final class PartTimes implements TimeReader {

  private static final double DAY = 86_400;

  private final NumberTimes.Part[] date;
  private final List<NumberTimes.Part> clock;
  private final NumberScanner numbers = new NumberScanner();
  private boolean started;
  private long firstDay;
  private double firstClock;
  private double seconds;
  private int decimals;

  /**
   * Times in parts.
   *
   * @param year the column of the year
   * @param month the column of the month
   * @param day the column of the day of the month
   * @param clock the columns of the time of day
   */
  PartTimes(
      NumberTimes.Part year,
      NumberTimes.Part month,
      NumberTimes.Part day,
      List<NumberTimes.Part> clock) {
    this.date = new NumberTimes.Part[] {year, month, day};
    this.clock = List.copyOf(clock);
  }

  @Override
  public boolean read(LineCells cells) {
    int[] parts = new int[3];
    for (int i = 0; i < 3; i++) {
      if (!scan(cells, date[i]) || numbers.value() != Math.rint(numbers.value())) {
        return false;
      }
      parts[i] = (int) numbers.value();
    }
    double ofDay = 0;
    for (NumberTimes.Part part : clock) {
      if (!scan(cells, part)) {
        return false;
      }
      ofDay += numbers.value() * part.seconds();
      decimals = part.seconds() == 1 ? Math.max(decimals, numbers.decimals()) : decimals;
    }
    return take(parts, ofDay);
  }

  private boolean scan(LineCells cells, NumberTimes.Part part) {
    int cell = part.column();
    return cell < cells.count()
        && numbers.scan(cells.text(), cells.start(cell), cells.end(cell), part.mark());
  }

  private boolean take(int[] parts, double ofDay) {
    if (!(ofDay >= 0 && ofDay < DAY)) {
      return false;
    }
    long day;
    try {
      int year = parts[0] < 100 ? 2000 + parts[0] : parts[0];
      day = LocalDate.of(year, parts[1], parts[2]).toEpochDay();
    } catch (DateTimeException e) {
      return false;
    }
    if (!started) {
      started = true;
      firstDay = day;
      firstClock = ofDay;
    }
    seconds = (day - firstDay) * DAY + ofDay - firstClock;
    return true;
  }

  @Override
  public double seconds() {
    return seconds;
  }

  @Override
  public TimeAxis.Kind kind() {
    return TimeAxis.Kind.DATE_TIME;
  }

  @Override
  public double resolution() {
    double finest = clock.stream().mapToDouble(NumberTimes.Part::seconds).min().orElse(DAY);
    return finest / Math.pow(10, decimals);
  }

  @Override
  public OptionalDouble startSecondOfDay() {
    return started ? OptionalDouble.of(firstClock) : OptionalDouble.empty();
  }

  @Override
  public Optional<LocalDate> startDate() {
    return started ? Optional.of(LocalDate.ofEpochDay(firstDay)) : Optional.empty();
  }
}
