package fairboil.analysis.model;

import java.util.Arrays;
import java.util.Optional;

/**
 * A regression of group means whose scatter has two sources: the groups themselves, and the error
 * of each mean. The variance between groups is that of Mandel and Paule (Analytical Chemistry 42,
 * 1970; for regressions DerSimonian and Kacker, Contemporary Clinical Trials 28, 2007): the
 * weighted sum of squares equals its degrees of freedom. Standard errors are scaled by the residual
 * mean square (Knapp and Hartung, Statistics in Medicine 22, 2003).
 *
 * <p>Where all means are equally certain this is plain least squares.
 */
public final class MandelPaule {

  private MandelPaule() {}

  /**
   * Fits the means.
   *
   * @param x the regressors, one row a group
   * @param means the mean of each group
   * @param variances the variance of each mean that its own runs explain: above 0, or all alike
   * @return the fit, or empty where {@link LinearFit} has no answer
   */
  public static Optional<LinearFit> fit(Regressors x, double[] means, double[] variances) {
    Optional<LinearFit> plain = LinearFit.of(x, means);
    if (allEqual(variances) || plain.isEmpty()) {
      return plain;
    }
    return LinearFit.of(x, means, weights(variances, 0)).isEmpty()
        ? Optional.empty()
        : LinearFit.of(x, means, weights(variances, between(plain.get(), means, variances)));
  }

  /** Weights scaled to a mean of 1, so that the residual variance is that of a usual mean. */
  private static double[] weights(double[] variances, double between) {
    double[] weights = Arrays.stream(variances).map(own -> 1 / (between + own)).toArray();
    double mean = Arrays.stream(weights).average().orElseThrow();
    return Arrays.stream(weights).map(weight -> weight / mean).toArray();
  }

  private static boolean allEqual(double[] variances) {
    return Arrays.stream(variances).allMatch(own -> own == variances[0]);
  }

  /**
   * The variance between groups, where the sum of squares, which falls as it grows, is what is due.
   */
  private static double between(LinearFit plain, double[] means, double[] variances) {
    if (excess(plain, means, variances, 0) <= 0) {
      return 0;
    }
    double scale = Arrays.stream(variances).max().orElseThrow();
    return scale
        * Root.ofIncreasing(times -> -excess(plain, means, variances, times * scale), 0, 0, 1);
  }

  private static double excess(
      LinearFit plain, double[] means, double[] variances, double between) {
    double[] weights = Arrays.stream(variances).map(own -> 1 / (between + own)).toArray();
    LinearFit fit = LinearFit.of(plain.regressors(), means, weights).orElseThrow();
    return fit.residualSumOfSquares() - fit.degreesOfFreedom();
  }
}
