package fairboil.reports.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers at full precision, as text that does not depend on the version of Java. */
final class Decimal {

  /** Any decimal of this many digits survives the way to a double of full precision and back. */
  private static final int SURE_DIGITS = 15;

  /** No double needs more. */
  private static final int MOST_DIGITS = 17;

  private static final double LONGEST_PLAIN = 1e15;
  private static final double SHORTEST_PLAIN = 1e-6;

  private Decimal() {}

  /** The shortest decimal that reads back as the same number; the nearest to it of the shortest. */
  static String of(double number) {
    if (number == 0) {
      return "0";
    }
    BigDecimal decimal = shortest(number).stripTrailingZeros();
    double size = Math.abs(number);
    return size >= SHORTEST_PLAIN && size < LONGEST_PLAIN
        ? decimal.toPlainString()
        : scientific(decimal);
  }

  private static BigDecimal shortest(double number) {
    BigDecimal exact = new BigDecimal(number);
    int fewest = Math.abs(number) < Double.MIN_NORMAL ? 1 : SURE_DIGITS;
    for (int digits = fewest; digits < MOST_DIGITS; digits++) {
      BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == number) {
        return rounded;
      }
    }
    return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
  }

  private static String scientific(BigDecimal decimal) {
    int exponent = decimal.precision() - decimal.scale() - 1;
    return decimal.scaleByPowerOfTen(-exponent).stripTrailingZeros().toPlainString()
        + "E"
        + exponent;
  }
}
