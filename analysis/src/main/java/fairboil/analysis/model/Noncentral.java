package fairboil.analysis.model;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Student's t shifted: what a test statistic follows when there is something to find (Johnson, Kotz
 * and Balakrishnan, Continuous Univariate Distributions 2, 2nd ed., 1995, chapter 31).
 */
public final class Noncentral {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private Noncentral() {}

  /**
   * The probability of a noncentral t variable up to {@code t}, whatever the numbers: by its
   * definition {@code P((Z + δ) / s ≤ t)}, the mean over {@code s = √(χ²/ν)} of {@code Φ(ts − δ)}.
   * That rises from 0 to 1 about {@code s = δ/t}, over a stretch of a few {@code 1/t}: the integral
   * is taken over that stretch alone, and beyond it is a χ² probability, to which the whole comes
   * down where t is so large that the stretch is a point.
   *
   * @param t finite
   * @param degreesOfFreedom at least 1
   * @param shift the noncentrality parameter δ, finite
   */
  public static double t(double t, double degreesOfFreedom, double shift) {
    if (t < 0) {
      return 1 - t(-t, degreesOfFreedom, -shift);
    }
    if (t == 0 || Double.isInfinite(degreesOfFreedom)) {
      return NORMAL.cumulativeProbability(t - shift);
    }
    if (degreesOfFreedom > Quadrature.KNOWN_WELL) {
      return ofMany(t, degreesOfFreedom, shift);
    }
    double rises = (shift - Quadrature.NORMAL_REACH) / t;
    double risen = (shift + Quadrature.NORMAL_REACH) / t;
    double rising =
        Quadrature.overScale(
            degreesOfFreedom, rises, risen, s -> NORMAL.cumulativeProbability(t * s - shift));
    return Math.min(1, rising + scaleBeyond(risen, degreesOfFreedom));
  }

  /** With many degrees of freedom: Abramowitz and Stegun, Handbook (1964), 26.7.10. */
  private static double ofMany(double t, double degreesOfFreedom, double shift) {
    double scale = Math.hypot(1, t / Math.sqrt(2 * degreesOfFreedom));
    return NORMAL.cumulativeProbability(
        t / scale * (1 - 1 / (4 * degreesOfFreedom)) - shift / scale);
  }

  private static double scaleBeyond(double s, double degreesOfFreedom) {
    if (s <= Quadrature.lowestScale(degreesOfFreedom)) {
      return 1;
    }
    return s >= Quadrature.highestScale(degreesOfFreedom)
        ? 0
        : ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(degreesOfFreedom * s * s);
  }

  /**
   * The probability that sample mean ± {@code factor} sample standard deviations, of {@code n}
   * normal values, lies within bounds.
   *
   * @param n at least 2
   * @param mean the true mean
   * @param sd the true standard deviation, above 0
   */
  public static double within(
      int n, double factor, double low, double high, double mean, double sd) {
    double unit = sd / Math.sqrt(n);
    return Quadrature.overScale(
        n - 1.0,
        0,
        (high - low) / (2 * factor * sd),
        s ->
            NORMAL.cumulativeProbability((high - factor * s * sd - mean) / unit)
                - NORMAL.cumulativeProbability((low + factor * s * sd - mean) / unit));
  }
}
