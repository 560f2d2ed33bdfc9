package fairboil.ingest.grid.workbook;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * Dates, times and durations as workbooks keep them: days since the first of 1900 or 1904, the time
 * of day as a part of a day. Written as the format shows them, except that dates are written as
 * year, month and day, and that nothing is hidden: seconds, or hours above 24, stand even where the
 * format leaves them out.
 */
final class Serial {

  private static final long DAY = 86_400_000;
  private static final long HOUR = 3_600_000;
  private static final long MINUTE = 60_000;
  private static final long SECOND = 1_000;

  /** The last day of the year 9999, from 1900. */
  private static final double LAST_DAY = 2_958_465;

  /** Fewer days than this with a time are a duration rather than a date before 1955. */
  private static final double DATES_FROM = 20_000;

  /** From here on, three parts with colons would be taken as a time of day. */
  private static final long CLOCK_FROM_HOUR = 4;

  // Workbooks count a 29 February 1900, which there was not.
  private static final LocalDate BEFORE_FIRST = LocalDate.of(1899, 12, 31);
  private static final int DAY_THAT_WAS_NOT = 60;
  private static final LocalDate FIRST_OF_1904 = LocalDate.of(1904, 1, 1);

  private final double days;
  private final FormatCode format;
  private final boolean from1904;

  private Serial(double days, FormatCode format, boolean from1904) {
    this.days = days;
    this.format = format;
    this.from1904 = from1904;
  }

  /** The text of a number of days in a format of dates or times; empty if it is no such day. */
  static Optional<String> text(double days, FormatCode format, boolean from1904) {
    return days < 0 || days > LAST_DAY
        ? Optional.empty()
        : Optional.of(new Serial(days, format, from1904).text());
  }

  private String text() {
    long millis = Math.round(days * DAY);
    long whole = millis / DAY;
    if (format.isElapsed()) {
      return duration(millis);
    }
    if (!format.showsTime()) {
      return date(whole).toString();
    }
    if (format.showsDate() && whole > 0) {
      return date(whole) + " " + time(millis % DAY);
    }
    if (days < DATES_FROM) {
      return whole > 0 ? duration(millis) : time(millis);
    }
    return date(whole) + " " + time(millis % DAY);
  }

  private LocalDate date(long day) {
    if (from1904) {
      return FIRST_OF_1904.plusDays(day);
    }
    return BEFORE_FIRST.plusDays(day >= DAY_THAT_WAS_NOT ? day - 1 : day);
  }

  private String time(long millis) {
    boolean onlyMinutes = !format.showsHours() && millis < HOUR;
    if (onlyMinutes) {
      return millis / MINUTE + ":" + seconds(millis % MINUTE);
    }
    long hour = millis / HOUR;
    String start =
        String.format(
            Locale.ROOT, "%d:%02d", format.hasHalves() ? half(hour) : hour, millis % HOUR / MINUTE);
    boolean seconds = format.showsSeconds() || format.showsDate() || millis % MINUTE > 0;
    String half = hour < 12 ? " AM" : " PM";
    return start
        + (seconds ? ":" + seconds(millis % MINUTE) : "")
        + (format.hasHalves() ? half : "");
  }

  private static long half(long hour) {
    return hour % 12 == 0 ? 12 : hour % 12;
  }

  private static String seconds(long millis) {
    String whole = String.format(Locale.ROOT, "%02d", millis / SECOND);
    long rest = millis % SECOND;
    return rest == 0
        ? whole
        : whole + String.format(Locale.ROOT, ".%03d", rest).replaceFirst("0+$", "");
  }

  private static String duration(long millis) {
    long hours = millis / HOUR;
    long minutes = millis % HOUR / MINUTE;
    String seconds = seconds(millis % MINUTE);
    return hours < CLOCK_FROM_HOUR
        ? String.format(Locale.ROOT, "%d:%02d:%s", hours, minutes, seconds)
        : hours + "h" + minutes + "m" + seconds + "s";
  }
}
