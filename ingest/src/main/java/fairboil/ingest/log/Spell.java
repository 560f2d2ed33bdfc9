package fairboil.ingest.log;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Numbers, times and counts as findings spell them. */
final class Spell {

  private static final int SHOWN = 40;

  private Spell() {}

  /** At most six digits, no trailing zeros, no exponent within reason. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return "nothing";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
    return Math.abs(value) < 1e12 ? rounded.toPlainString() : rounded.toString();
  }

  /** {@code 0:12:05} or {@code 0:12:05.5}: elapsed time as {@code log from} takes it. */
  static String elapsed(double seconds) {
    long millis = Math.round(Math.abs(seconds) * 1000);
    long whole = millis / 1000;
    String text =
        String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
    return (seconds < 0 ? "-" : "") + text + fraction(millis % 1000);
  }

  private static String fraction(long millis) {
    return millis == 0 ? "" : number(millis / 1000.0).substring(1);
  }

  /** {@code 1 line}, {@code 3 lines}. */
  static String count(long count, String noun) {
    return count + " " + (count == 1 ? noun : noun + "s");
  }

  /** A cell's text between quotation marks, cut short if it is long. */
  static String quoted(String text) {
    String shown = text.length() <= SHOWN ? text : text.substring(0, SHOWN - 1) + "\u2026";
    return "\u201c" + shown.replaceAll("\\p{Cntrl}", "?") + "\u201d";
  }
}
