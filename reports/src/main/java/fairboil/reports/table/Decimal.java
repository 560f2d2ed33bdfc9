package fairboil.reports.table;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers at full precision, as text that does not depend on the version of Java. */
final class Decimal {

  private static final double LONGEST_PLAIN = 1e15;
  private static final double SHORTEST_PLAIN = 1e-6;

  private Decimal() {}

  /** The shortest decimal that reads back as the same number; the nearest to it of the shortest. */
  static String of(double number) {
    if (number == 0) {
      return "0";
    }
    String shortest = shortest(number);
    double size = Math.abs(number);
    if (shortest.indexOf('E') < 0) {
      return shortest.endsWith(".0") ? shortest.substring(0, shortest.length() - 2) : shortest;
    }
    BigDecimal decimal = new BigDecimal(shortest).stripTrailingZeros();
    return size >= SHORTEST_PLAIN && size < LONGEST_PLAIN
        ? decimal.toPlainString()
        : scientific(decimal);
  }

  /** As Java writes it from version 19 on; earlier ones have digits to spare. */
  private static String shortest(double number) {
    return Math.abs(number) < Double.MIN_NORMAL
        ? shortestOfFew(number)
        : NumberOutput.toString(number, true);
  }

  /** The least of numbers have so few digits that even one can do, which Java makes two. */
  private static String shortestOfFew(double number) {
    BigDecimal exact = new BigDecimal(number);
    for (int digits = 1; ; digits++) {
      BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == number) {
        return rounded.toString();
      }
    }
  }

  private static String scientific(BigDecimal decimal) {
    int exponent = decimal.precision() - decimal.scale() - 1;
    return decimal.scaleByPowerOfTen(-exponent).stripTrailingZeros().toPlainString()
        + "E"
        + exponent;
  }
}
