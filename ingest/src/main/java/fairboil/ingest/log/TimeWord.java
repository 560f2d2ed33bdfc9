package fairboil.ingest.log;

import fairboil.ingest.quantity.Unit;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a header, or the unit in {@code sensors.csv}, says of how a column tells time. */
enum TimeWord {
  SECONDS(Unit.SECOND),
  MILLISECONDS(Unit.MILLISECOND),
  MICROSECONDS(Unit.MICROSECOND),
  MINUTES(Unit.MINUTE),
  HOURS(Unit.HOUR),
  /** Days: of a month where there are columns of years and months too. */
  DAYS(Unit.DAY),
  YEAR(null),
  MONTH(null),
  HOURS_MINUTES(null),
  MINUTES_SECONDS(null),
  HOURS_MINUTES_SECONDS(null),
  MINUTES_SECONDS_MILLISECONDS(null),
  TIME_OF_DAY(null),
  ELAPSED(null);

  private static final Pattern JOINTS = Pattern.compile("[\\s_-]+");

  private static final Map<String, TimeWord> WORDS =
      Map.ofEntries(
          Map.entry("s", SECONDS),
          Map.entry("sec", SECONDS),
          Map.entry("secs", SECONDS),
          Map.entry("second", SECONDS),
          Map.entry("seconds", SECONDS),
          Map.entry("epoch s", SECONDS),
          Map.entry("epoch", SECONDS),
          Map.entry("unix", SECONDS),
          Map.entry("ms", MILLISECONDS),
          Map.entry("msec", MILLISECONDS),
          Map.entry("msecs", MILLISECONDS),
          Map.entry("milli", MILLISECONDS),
          Map.entry("millis", MILLISECONDS),
          Map.entry("millisecond", MILLISECONDS),
          Map.entry("milliseconds", MILLISECONDS),
          Map.entry("epoch ms", MILLISECONDS),
          Map.entry("us", MICROSECONDS),
          Map.entry("\u00b5s", MICROSECONDS),
          Map.entry("\u03bcs", MICROSECONDS),
          Map.entry("usec", MICROSECONDS),
          Map.entry("micros", MICROSECONDS),
          Map.entry("microsecond", MICROSECONDS),
          Map.entry("microseconds", MICROSECONDS),
          Map.entry("epoch us", MICROSECONDS),
          Map.entry("epoch \u00b5s", MICROSECONDS),
          Map.entry("min", MINUTES),
          Map.entry("mins", MINUTES),
          Map.entry("minute", MINUTES),
          Map.entry("minutes", MINUTES),
          Map.entry("h", HOURS),
          Map.entry("hr", HOURS),
          Map.entry("hrs", HOURS),
          Map.entry("hour", HOURS),
          Map.entry("hours", HOURS),
          Map.entry("d", DAYS),
          Map.entry("day", DAYS),
          Map.entry("days", DAYS),
          Map.entry("year", YEAR),
          Map.entry("yyyy", YEAR),
          Map.entry("month", MONTH),
          Map.entry("h:mm", HOURS_MINUTES),
          Map.entry("hh:mm", HOURS_MINUTES),
          Map.entry("m:ss", MINUTES_SECONDS),
          Map.entry("mm:ss", MINUTES_SECONDS),
          Map.entry("m:ss:mmm", MINUTES_SECONDS_MILLISECONDS),
          Map.entry("mm:ss:mmm", MINUTES_SECONDS_MILLISECONDS),
          Map.entry("h:mm:ss", HOURS_MINUTES_SECONDS),
          Map.entry("hh:mm:ss", HOURS_MINUTES_SECONDS),
          Map.entry("time of day", TIME_OF_DAY),
          Map.entry("clock", TIME_OF_DAY),
          Map.entry("elapsed", ELAPSED),
          Map.entry("duration", ELAPSED),
          Map.entry("since start", ELAPSED));

  private final @Nullable Unit unit;

  TimeWord(@Nullable Unit unit) {
    this.unit = unit;
  }

  /** The unit of a number, for words that are units. */
  Optional<Unit> unit() {
    return Optional.ofNullable(unit);
  }

  /** What a text says, if it is one of these words. */
  static Optional<TimeWord> of(String text) {
    String plain = JOINTS.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    return Optional.ofNullable(
        WORDS.get(plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain));
  }
}
