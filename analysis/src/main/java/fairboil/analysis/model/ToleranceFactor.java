package fairboil.analysis.model;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Factors {@code k} of tolerance bounds of a normal sample: with the given confidence, at least the
 * given share of the population lies below {@code mean + k s}, or within {@code mean ± k s} (ISO
 * 16269-6:2014; NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.6.3).
 */
public final class ToleranceFactor {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private ToleranceFactor() {}

  /**
   * The factor of a one-sided bound, exact by the noncentral t distribution.
   *
   * @param n sample size, at least 2
   * @param share between 0 and 1
   * @param confidence between 0 and 1; small for the lower end of an interval of the quantile
   */
  public static double oneSided(int n, double share, double confidence) {
    double shift = NORMAL.inverseCumulativeProbability(share) * Math.sqrt(n);
    double quantile =
        Root.ofIncreasing(
            t -> Noncentral.t(t, n - 1.0, shift), confidence, -Math.abs(shift) * 20 - 50, 50);
    return quantile / Math.sqrt(n);
  }

  /**
   * The factor of a two-sided interval, exact by integration over the mean.
   *
   * @param n sample size, at least 2
   * @param share between 0 and 1
   * @param confidence between 0 and 1
   */
  public static double twoSided(int n, double share, double confidence) {
    return Root.ofIncreasing(k -> coverage(n, share, k), confidence, 0, 20);
  }

  /** How often {@code mean ± k s} covers at least the share. */
  private static double coverage(int n, double share, double k) {
    ChiSquaredDistribution chiSquared = ChiSquaredDistribution.of(n - 1.0);
    return k == 0
        ? 0
        : Quadrature.overNormal(
            z -> {
              double half = halfWidth(z / Math.sqrt(n), share) / k;
              return chiSquared.survivalProbability((n - 1) * half * half);
            });
  }

  /** The half width about {@code x} that covers the share of a standard normal population. */
  private static double halfWidth(double x, double share) {
    return Root.ofIncreasing(
        half -> NORMAL.cumulativeProbability(x + half) - NORMAL.cumulativeProbability(x - half),
        share,
        0,
        Math.abs(x) + 4);
  }
}
