package fairboil.ingest.log;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** Times written as moments: with colons, with dates, in one column or in two. */
final class StampTimes implements TimeReader {

  private static final double DAY = 86_400;

  private final StampFormat format;
  private final int[] columns;
  private final StampScanner scanner = new StampScanner();
  private char[] joined = new char[64];
  private boolean started;
  private long firstDay;
  private double firstClock;
  private double firstSeconds;
  private double seconds;
  private double step = 60;

  private long day;
  private final int[] dayParts = {-1, -1, -1};
  private final int[] dayDigits = new int[3];

  /**
   * Moments in the given columns, from 0: one of moments, or one of dates and one of times.
   *
   * @param format how they are written
   */
  StampTimes(StampFormat format, int... columns) {
    this.format = format;
    this.columns = columns.clone();
  }

  @Override
  public boolean read(LineCells cells) {
    if (!scan(cells) || !scanner.hasTime() || !scanner.isProper()) {
      return false;
    }
    boolean dated = format.order().isPresent();
    if (scanner.hasMilliseconds() != (format.style() == ClockStyle.MILLISECONDS_LAST)) {
      return false;
    }
    if (dated != scanner.hasDate() || !hasExpectedOffset() || (dated && !readDay())) {
      return false;
    }
    double clock = scanner.seconds(format.style());
    step = Math.min(step, scanner.step(format.style()));
    double total = (dated ? day - firstDay : 0) * DAY + clock - scanner.offsetSeconds();
    if (!started) {
      start(clock);
      total = clock - scanner.offsetSeconds();
      firstSeconds = total;
    }
    seconds = total - firstSeconds;
    return true;
  }

  private boolean hasExpectedOffset() {
    return scanner.hasOffset() == (format.offsets() == StampFormat.Offsets.IN_EVERY_CELL);
  }

  private void start(double clock) {
    started = true;
    firstDay = day;
    firstClock = clock;
  }

  private boolean scan(LineCells cells) {
    int cell = columns[0];
    if (columns.length == 1) {
      return cell < cells.count() && scanner.scan(cells.text(), cells.start(cell), cells.end(cell));
    }
    int length = 0;
    for (int column : columns) {
      length = append(cells, column, length);
    }
    return length > 0 && scanner.scan(joined, 0, length - 1);
  }

  private int append(LineCells cells, int column, int length) {
    if (column >= cells.count() || cells.end(column) - cells.start(column) > 30) {
      return 0;
    }
    int count = cells.end(column) - cells.start(column);
    System.arraycopy(cells.text(), cells.start(column), joined, length, count);
    joined[length + count] = ' ';
    return length + count + 1;
  }

  // Dates repeat from row to row.
  private boolean readDay() {
    boolean same = true;
    for (int i = 0; i < 3; i++) {
      same &= dayParts[i] == scanner.datePart(i) && dayDigits[i] == scanner.dateDigits(i);
    }
    if (same) {
      return true;
    }
    Optional<LocalDate> date = format.order().orElseThrow().date(scanner);
    if (date.isEmpty()) {
      return false;
    }
    day = date.get().toEpochDay();
    for (int i = 0; i < 3; i++) {
      dayParts[i] = scanner.datePart(i);
      dayDigits[i] = scanner.dateDigits(i);
    }
    return true;
  }

  @Override
  public double seconds() {
    return seconds;
  }

  @Override
  public TimeAxis.Kind kind() {
    return format.kind();
  }

  @Override
  public double resolution() {
    return step;
  }

  @Override
  public OptionalDouble startSecondOfDay() {
    return started && format.trust() != StampFormat.Trust.NOTHING
        ? OptionalDouble.of(firstClock)
        : OptionalDouble.empty();
  }

  @Override
  public Optional<LocalDate> startDate() {
    boolean told = started && format.order().isPresent();
    return told && format.trust() == StampFormat.Trust.DATE_AND_CLOCK
        ? Optional.of(LocalDate.ofEpochDay(firstDay))
        : Optional.empty();
  }
}
