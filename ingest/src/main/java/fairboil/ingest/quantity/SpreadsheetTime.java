package fairboil.ingest.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A time in a form that spreadsheets write: {@code 08:15:00}, {@code 08:15:00 PM}, {@code 08:15
 * PM}, or of more than a day {@code 24h30m00s}. A person may have typed it so, or typed minutes and
 * seconds: spreadsheets take 8:15 for a quarter past eight, and leave whole days out where they
 * show 24:30 as 12:30:00 AM.
 *
 * @param hours the hours, AM and PM honoured: 12 AM is 0, 8 PM is 20; 24 and more are days
 * @param minutes the minutes, 0 to 59
 * @param seconds the seconds as written; empty if none are shown
 * @param half whether AM or PM stands behind it
 */
public record SpreadsheetTime(int hours, int minutes, Optional<String> seconds, Half half) {

  /** Whether AM or PM stands behind a time. */
  public enum Half {
    /** It does. */
    WRITTEN,
    /** It does not. */
    NOT_WRITTEN
  }

  private static final Pattern COLONS =
      Pattern.compile(
          "(\\d{1,4}):(\\d{1,2}):(\\d{1,2}(?:[.,]\\d{1,9})?)(?: ?([ap])\\.?(?:m\\.?)?)?",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern NO_SECONDS =
      Pattern.compile(
          "(\\d{1,2})(?:[:h](\\d{1,2}))? ?([ap])\\.?(?:m\\.?)?", Pattern.CASE_INSENSITIVE);

  /** What a cell of a workbook that holds more than a day is read as. */
  private static final Pattern DAYS =
      Pattern.compile("(\\d{1,7})h(\\d{1,2})m(\\d{2}(?:[.,]\\d{1,9})?)s");

  /** The time that a text shows, if it is in one of those forms. */
  public static Optional<SpreadsheetTime> of(String written) {
    String tidy = Tidy.text(written);
    Matcher colons = COLONS.matcher(tidy);
    if (colons.matches()) {
      return made(colons.group(1), colons.group(2), colons.group(3), colons.group(4));
    }
    Matcher none = NO_SECONDS.matcher(tidy);
    if (none.matches()) {
      String minutes = none.group(2) == null ? "0" : none.group(2);
      return made(none.group(1), minutes, null, none.group(3));
    }
    Matcher days = DAYS.matcher(tidy);
    return days.matches() && Integer.parseInt(days.group(1)) >= MomentText.CLOCK_FROM_HOUR
        ? made(days.group(1), days.group(2), days.group(3), null)
        : Optional.empty();
  }

  private static Optional<SpreadsheetTime> made(
      String hours, String minutes, @Nullable String seconds, @Nullable String half) {
    int hour = Integer.parseInt(hours);
    boolean afternoon = half != null && half.toLowerCase(Locale.ROOT).equals("p");
    return Optional.of(
        new SpreadsheetTime(
            half == null ? hour : hour % 12 + (afternoon ? 12 : 0),
            Integer.parseInt(minutes),
            Optional.ofNullable(seconds).map(text -> text.replace(',', '.')),
            half == null ? Half.NOT_WRITTEN : Half.WRITTEN));
  }

  /** Whether AM or PM stands behind it. */
  public boolean hasHalf() {
    return half == Half.WRITTEN;
  }

  /** As it is written, in seconds since 0:00:00. */
  public double inSeconds() {
    return hours * 3600.0 + minutes * 60.0 + lastPart();
  }

  /** Whether it shows no seconds or none but zero, as minutes and seconds turned into hours do. */
  public boolean isWholeMinutes() {
    return lastPart() == 0;
  }

  private double lastPart() {
    return Double.parseDouble(seconds.orElse("0"));
  }

  /** What to type if minutes and seconds were meant: {@code 20m15s} for {@code 08:15:00 PM}. */
  public String asMinutesAndSeconds() {
    return spelt(0, hours, String.valueOf(minutes));
  }

  /** The same if a spreadsheet left a day out: {@code 24m10s} for {@code 12:10:00 AM}. */
  public String asMinutesAndSecondsOfNextDay() {
    return spelt(0, hours + 24, String.valueOf(minutes));
  }

  /** What to type if hours, minutes and seconds were meant: {@code 1m20s} for {@code 0:01:20}. */
  public String asHoursMinutesAndSeconds() {
    return seconds.isEmpty() && hours == 0
        ? minutes + "m"
        : spelt(hours, minutes, seconds.orElse("0"));
  }

  private static String spelt(int hours, int minutes, String seconds) {
    String last = seconds.replaceFirst("^0(?=\\d)", "");
    boolean none = Double.parseDouble(last) == 0;
    if (hours > 0) {
      return hours + "h" + minutes + "m" + (none ? "" : last + "s");
    }
    return minutes > 0 ? minutes + "m" + (none ? "0" : last) + "s" : last + "s";
  }
}
