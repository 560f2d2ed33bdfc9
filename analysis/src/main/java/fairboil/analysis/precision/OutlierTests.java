package fairboil.analysis.precision;

import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Critical values of the tests of ISO 5725-2:1994 (clauses 7.3 and 8, tables 4 to 7), from the
 * closed forms that their tables are made of.
 */
final class OutlierTests {

  private OutlierTests() {}

  /**
   * Cochran's largest share of the variance , as a share of their sum.
   *
   * @param groups how many variances, at least 2
   * @param size how many values each stands on, at least 2
   * @param alpha how often chance alone exceeds it
   */
  static double cochran(int groups, int size, double alpha) {
    double f =
        FDistribution.of(size - 1.0, (groups - 1.0) * (size - 1.0))
            .inverseSurvivalProbability(alpha / groups);
    return 1 / (1 + (groups - 1) / f);
  }

  /**
   * Grubbs's largest deviation of a mean, in standard deviations (Technometrics 11, 1969), on
   * either side, as table 5 of ISO 5725-2 prints it.
   *
   * @param groups how many means, at least 3
   */
  static double grubbs(int groups, double alpha) {
    double t = TDistribution.of(groups - 2.0).inverseSurvivalProbability(alpha / (2.0 * groups));
    return (groups - 1) / Math.sqrt(groups) * Math.sqrt(t * t / (groups - 2 + t * t));
  }

  /**
   * Mandel's h, between groups.
   *
   * @param groups how many means, at least 3
   */
  static double mandelH(int groups, double alpha) {
    double t = TDistribution.of(groups - 2.0).inverseSurvivalProbability(alpha / 2);
    return (groups - 1) * t / Math.sqrt(groups * (t * t + groups - 2));
  }

  /**
   * Mandel's k, within groups.
   *
   * @param groups how many variances, at least 2
   * @param size how many values each stands on, at least 2
   */
  static double mandelK(int groups, int size, double alpha) {
    double f =
        FDistribution.of(size - 1.0, (groups - 1.0) * (size - 1.0))
            .inverseSurvivalProbability(alpha);
    return Math.sqrt(groups / (1 + (groups - 1) / f));
  }
}
