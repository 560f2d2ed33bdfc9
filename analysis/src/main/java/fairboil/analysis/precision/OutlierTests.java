package fairboil.analysis.precision;

import java.util.Optional;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Critical values of the tests of ISO 5725-2:1994 (clauses 7.3 and 8, tables 4 to 7), from the
 * closed forms that their tables are made of; for pairs, of which there is none, from the table.
 */
final class OutlierTests {

  private OutlierTests() {}

  /**
   * Cochran's largest share of the variance, as a share of their sum.
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
   * Grubbs's share of the squares of means that is left without the two highest, or the two lowest
   * (F. E. Grubbs, G. Beck, Technometrics 14, 1972), as table 5 of ISO 5725-2 prints it: what is
   * smaller lies out.
   *
   * @param groups how many means
   * @return empty where the table has none
   */
  static Optional<PairLimits> grubbsPair(int groups) {
    int row = groups - FEWEST_FOR_PAIRS;
    return row < 0 || row >= PAIRS.length
        ? Optional.empty()
        : Optional.of(new PairLimits(PAIRS[row][0], PAIRS[row][1]));
  }

  /** What chance undercuts once in a hundred and once in twenty times. */
  record PairLimits(double onePercent, double fivePercent) {}

  private static final int FEWEST_FOR_PAIRS = 4;

  /** For 4 to 20 means: 1 % and 5 %. Typed from memory; a test draws them anew. */
  private static final double[][] PAIRS = {
    {0.0000, 0.0002}, {0.0018, 0.0090}, {0.0116, 0.0349}, {0.0308, 0.0708}, {0.0563, 0.1101},
    {0.0851, 0.1492}, {0.1150, 0.1864}, {0.1448, 0.2213}, {0.1738, 0.2537}, {0.2016, 0.2836},
    {0.2280, 0.3112}, {0.2530, 0.3367}, {0.2767, 0.3603}, {0.2990, 0.3822}, {0.3200, 0.4025},
    {0.3398, 0.4214}, {0.3585, 0.4391}
  };

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
