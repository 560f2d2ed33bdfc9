package fairboil.reports.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers with as many decimals as are asked for. */
public final class Fixed {

  private static final char MINUS = '\u2212';
  private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};
  private static final double LARGEST = 1e9;
  // Far more than a product can be off, far less than a digit.
  private static final double NEAR = 1e-6;

  private Fixed() {}

  /**
   * The number rounded half to even as it is written, with a true minus sign; nothing is not
   * negative.
   *
   * @param number finite
   * @param decimals at least 0
   */
  public static String of(double number, int decimals) {
    if (decimals < POWERS.length) {
      double scaled = Math.abs(number) * POWERS[decimals];
      double rest = scaled - Math.floor(scaled);
      if (scaled < LARGEST && Math.abs(rest - 0.5) > NEAR) {
        return text(number < 0, Math.round(scaled), decimals);
      }
    }
    BigDecimal exact = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
    return exact.signum() < 0 ? MINUS + exact.negate().toPlainString() : exact.toPlainString();
  }

  private static String text(boolean negative, long scaled, int decimals) {
    long power = POWERS[decimals];
    StringBuilder text = new StringBuilder();
    if (negative && scaled > 0) {
      text.append(MINUS);
    }
    text.append(scaled / power);
    if (decimals > 0) {
      // With a 1 in front, for the zeros.
      String fraction = Long.toString(power + scaled % power);
      text.append('.').append(fraction, 1, fraction.length());
    }
    return text.toString();
  }
}
