package fairboil.demo;

import java.math.BigDecimal;

/** Numbers as text: always the same, whatever the Java that runs. */
final class Decimal {

  private static final long[] TENS = {1, 10, 100, 1000, 10_000};

  private Decimal() {}

  /** A number with so many digits after the point, at most 4. */
  static String text(double value, int digits) {
    return BigDecimal.valueOf(Math.round(value * TENS[digits]), digits).toPlainString();
  }

  /** The number that {@link #text} writes. */
  static double rounded(double value, int digits) {
    return Math.round(value * TENS[digits]) / (double) TENS[digits];
  }

  /** A whole number with at least two digits. */
  static String twoDigits(long value) {
    return value < 10 ? "0" + value : Long.toString(value);
  }

  /** Seconds as minutes and seconds, such as 7:05. */
  static String minutes(long seconds) {
    return seconds / 60 + ":" + twoDigits(seconds % 60);
  }
}
