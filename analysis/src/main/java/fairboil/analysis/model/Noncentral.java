package fairboil.analysis.model;

import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.numbers.gamma.RegularizedBeta;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Noncentral distributions: what a test statistic follows when there is something to find.
 * Student's t shifted, and Fisher's F, whose shifted numerator is a mixture of central ones by
 * Poisson's distribution (Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions 2,
 * 2nd ed., 1995, chapters 30 and 31).
 */
public final class Noncentral {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Terms of the mixture below this, as a part of the largest, count for nothing. */
  private static final double NEGLIGIBLE = 1e-17;

  /** From this t on the integrand is too steep for a coarse rule. */
  private static final double STEEP = 12;

  private Noncentral() {}

  /**
   * The probability of a noncentral t variable up to {@code t}.
   *
   * @param degreesOfFreedom above 0
   * @param shift the noncentrality parameter δ
   */
  public static double t(double t, double degreesOfFreedom, double shift) {
    int finer = 1 + (int) (Math.abs(t) / STEEP); // it rises within 1/t of shift/t
    return Quadrature.overScale(
        degreesOfFreedom,
        Double.POSITIVE_INFINITY,
        finer,
        s -> NORMAL.cumulativeProbability(t * s - shift));
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
        (high - low) / (2 * factor * sd),
        1,
        s ->
            NORMAL.cumulativeProbability((high - factor * s * sd - mean) / unit)
                - NORMAL.cumulativeProbability((low + factor * s * sd - mean) / unit));
  }

  /**
   * The probability of a noncentral F variable beyond {@code f}: the power of a test that finds
   * something from {@code f} on. With one degree of freedom above it is that of a two-sided t test.
   *
   * @param f at least 0
   * @param above degrees of freedom of the numerator, above 0
   * @param below degrees of freedom of the denominator, above 0
   * @param shift the noncentrality parameter λ, at least 0: the square of δ for one degree above
   */
  public static double fBeyond(double f, double above, double below, double shift) {
    if (!(f > 0)) {
      return 1;
    }
    double share = below / (below + above * f);
    double half = shift / 2;
    int mode = (int) half;
    double largest = half == 0 ? 1 : Math.exp(mode * Math.log(half) - half - logFactorial(mode));
    double sum = 0;
    double weight = largest;
    for (int j = mode; weight > NEGLIGIBLE * largest; j++) {
      sum += weight * beyond(share, above, below, j);
      weight *= half / (j + 1);
    }
    weight = largest;
    for (int j = mode; j > 0 && weight > NEGLIGIBLE * largest; j--) {
      weight *= j / half;
      sum += weight * beyond(share, above, below, j - 1);
    }
    return Math.min(1, sum);
  }

  /** Of the central variable with {@code 2j} more degrees of freedom above. */
  private static double beyond(double share, double above, double below, int j) {
    return RegularizedBeta.value(share, below / 2, above / 2 + j);
  }

  private static double logFactorial(int n) {
    return LogGamma.value(n + 1.0);
  }
}
