package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads moments: time on a stopwatch ({@code 5:43}, {@code 5m43s}, {@code 0:05:43}, {@code 343 s})
 * or on a clock ({@code 14:05:30}, {@code 2:05 pm}, {@code 2026-03-14 14:05:30}).
 *
 * <p>Two parts are minutes and seconds. Three parts are a stopwatch below {@link #CLOCK_FROM_HOUR}
 * hours, else a clock: no burn lasts that long.
 */
public final class MomentText {

  /** Three parts with at least this many hours, but fewer than 24, are the time of day. */
  public static final int CLOCK_FROM_HOUR = 4;

  private static final Pattern CLOCK =
      Pattern.compile(
          "(\\d{1,2})[:h](\\d{1,2})(?::(\\d{1,2}(?:[.,]\\d{1,9})?))? ?([ap])?\\.?(?:m\\.?)?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern HOUR_ONLY =
      Pattern.compile("(\\d{1,2}) ?([ap])\\.?m\\.?", Pattern.CASE_INSENSITIVE);
  private static final Pattern ZONE = Pattern.compile(" ?(?:Z|[+-]\\d{2}:?\\d{2}| UTC| GMT)$");
  private static final Pattern DAY_FRACTION = Pattern.compile("0?[.,]\\d{4,}");

  private MomentText() {}

  /**
   * Reads a moment on a stopwatch or a clock.
   *
   * @param text what a person wrote
   * @param unit the unit of a bare number, from the header
   * @param mark what the file says of decimal marks
   */
  public static Reading<ClockTime> read(String text, Optional<Unit> unit, DecimalMark mark) {
    String tidy = Tidy.text(text);
    return Tidy.<ClockTime>tooLong(tidy).orElseGet(() -> moment(tidy, unit, mark));
  }

  private static Reading<ClockTime> moment(String tidy, Optional<Unit> unit, DecimalMark mark) {
    if (Tidy.isNothing(tidy)) {
      return new Reading.Missing<>();
    }
    Optional<String[]> dated = DateText.split(tidy);
    if (dated.isPresent()) {
      return dated(dated.get()[0], dated.get()[1]);
    }
    Matcher clock = CLOCK.matcher(tidy);
    if (HOUR_ONLY.matcher(tidy).matches() || (clock.matches() && tellsClock(clock))) {
      return timeOfDay(tidy);
    }
    return elapsed(tidy, unit, mark);
  }

  private static boolean tellsClock(Matcher clock) {
    int hour = Integer.parseInt(clock.group(1));
    return clock.group(4) != null
        || (clock.group(3) != null && hour >= CLOCK_FROM_HOUR && hour < 24);
  }

  private static Reading<ClockTime> elapsed(String tidy, Optional<Unit> unit, DecimalMark mark) {
    if (unit.isEmpty() && DAY_FRACTION.matcher(tidy).matches()) {
      return new Reading.Refused<>(
          ReadingSays.PART_OF_A_DAY.with(Argument.cell(tidy)), ReadingSays.COLUMN_AS_TEXT);
    }
    return QuantityText.read(tidy, List.of(Dimension.DURATION), unit, mark)
        .then(
            read -> {
              Quantity time = read.value();
              if (time.value() < 0) {
                return new Reading.Refused<>(
                    ReadingSays.BEFORE_START.with(Argument.cell(tidy)), ReadingSays.SINCE_START);
              }
              return new Reading.Read<>(
                  new ClockTime.Elapsed(time.value(), time.resolution()),
                  read.unit(),
                  read.remark());
            });
  }

  /** Reads a time of day, with or without a date: {@code 14:05} is five past two. */
  public static Reading<ClockTime> readTimeOfDay(String text) {
    String tidy = Tidy.text(text);
    return Tidy.<ClockTime>tooLong(tidy).orElseGet(() -> timeOfDayOrNone(tidy));
  }

  private static Reading<ClockTime> timeOfDayOrNone(String tidy) {
    if (Tidy.isNothing(tidy)) {
      return new Reading.Missing<>();
    }
    return DateText.split(tidy)
        .map(parts -> dated(parts[0], parts[1]))
        .orElseGet(() -> timeOfDay(tidy));
  }

  private static Reading<ClockTime> dated(String date, String time) {
    return DateText.read(date)
        .then(
            day -> {
              String local = ZONE.matcher(time).replaceFirst("");
              Optional<Message> remark =
                  local.equals(time) ? Optional.empty() : Optional.of(ReadingSays.ZONE);
              return timeOfDay(local, Optional.of(day.value()), remark);
            });
  }

  private static Reading<ClockTime> timeOfDay(String tidy) {
    return timeOfDay(tidy, Optional.empty(), Optional.empty());
  }

  private static Reading<ClockTime> timeOfDay(
      String tidy, Optional<LocalDate> date, Optional<Message> remark) {
    Matcher clock = CLOCK.matcher(tidy);
    Matcher hour = HOUR_ONLY.matcher(tidy);
    if (hour.matches()) {
      return timeOfDay(tidy, date, remark, hour.group(1), "0", Optional.empty(), hour.group(2));
    }
    if (clock.matches()) {
      Optional<String> seconds = Optional.ofNullable(clock.group(3));
      return timeOfDay(tidy, date, remark, clock.group(1), clock.group(2), seconds, clock.group(4));
    }
    return noTimeOfDay(tidy);
  }

  private static Reading<ClockTime> noTimeOfDay(String tidy) {
    return new Reading.Refused<>(
        ReadingSays.NO_TIME_OF_DAY.with(Argument.cell(tidy)), ReadingSays.AS_TIME_OF_DAY);
  }

  private static Reading<ClockTime> timeOfDay(
      String tidy,
      Optional<LocalDate> date,
      Optional<Message> remark,
      String hours,
      String minutes,
      Optional<String> seconds,
      String half) {
    int hour = Integer.parseInt(hours);
    int minute = Integer.parseInt(minutes);
    String plain = seconds.orElse("0").replace(',', '.');
    double second = Double.parseDouble(plain);
    boolean halves = half != null;
    if (minute > 59 || second >= 60 || hour > (halves ? 12 : 23) || (halves && hour == 0)) {
      return noTimeOfDay(tidy);
    }
    int hourOfDay = halves ? hour % 12 + (isAfternoon(half) ? 12 : 0) : hour;
    double step = seconds.isPresent() ? WrittenNumber.step(plain) : 60;
    double secondOfDay = hourOfDay * 3600.0 + minute * 60.0 + second;
    return new Reading.Read<>(
        new ClockTime.TimeOfDay(secondOfDay, date, step), Optional.empty(), remark);
  }

  private static boolean isAfternoon(String half) {
    return half.toLowerCase(Locale.ROOT).equals("p");
  }
}
