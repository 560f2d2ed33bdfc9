package fairboil.analysis.figure;

import java.util.Arrays;

/**
 * How values scatter about their mean. Values that are the same but for rounding ({@link
 * Interval#isPoint}) do not scatter at all: what would be judged by rounding is not settled.
 */
public final class Deviations {

  private Deviations() {}

  /**
   * The sum of squared deviations from the mean; exactly 0 for values that are the same but for
   * rounding.
   *
   * @param values at least one, finite
   */
  public static double squares(double[] values) {
    if (areNone(values)) {
      return 0;
    }
    // from the first, so that a large level drowns nothing
    double first = values[0];
    double mean = Arrays.stream(values).map(value -> value - first).average().orElseThrow();
    double squares = 0;
    for (double value : values) {
      double deviation = value - first - mean;
      squares += deviation * deviation;
    }
    return squares;
  }

  /** Whether values are the same but for rounding. */
  public static boolean areNone(double[] values) {
    double low = Arrays.stream(values).min().orElseThrow();
    return new Interval(low, Arrays.stream(values).max().orElseThrow()).isPoint();
  }
}
