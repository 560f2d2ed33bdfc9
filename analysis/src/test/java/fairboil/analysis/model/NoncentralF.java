package fairboil.analysis.model;

import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * Fisher's F with a shifted numerator, a mixture of central ones by Poisson's distribution
 * (Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions 2, 2nd ed., 1995, chapter
 * 30): for checks, by another way, of what is found with Student's t.
 */
final class NoncentralF {

  /** Terms of the mixture below this, as a part of the largest, count for nothing. */
  private static final double NEGLIGIBLE = 1e-17;

  private NoncentralF() {}

  /**
   * The probability of a noncentral F variable beyond {@code f}: the power of a test that finds
   * something from {@code f} on. With one degree of freedom above it is that of a two-sided t test.
   *
   * @param f at least 0
   * @param above degrees of freedom of the numerator, above 0
   * @param below degrees of freedom of the denominator, above 0
   * @param shift the noncentrality parameter λ, at least 0: the square of δ for one degree above
   */
  static double beyond(double f, double above, double below, double shift) {
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
