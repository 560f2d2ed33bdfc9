package fairboil.analysis.model;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** How often estimates with Student's t come out as wished, before there are any. */
public final class TwoSidedTests {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private TwoSidedTests() {}

  /**
   * How often an interval of an estimate leaves 0 out, on either side.
   *
   * @param effect the truth
   * @param standardError the true standard error of its estimate, above 0
   * @param degreesOfFreedom with which the standard error will be estimated, above 0
   * @param factor by which it is multiplied for half the interval
   */
  public static double detection(
      double effect, double standardError, double degreesOfFreedom, double factor) {
    double shift = Math.abs(effect / standardError);
    double beyond =
        1
            - Noncentral.t(factor, degreesOfFreedom, shift)
            + Noncentral.t(-factor, degreesOfFreedom, shift);
    return Math.max(0, Math.min(1, beyond));
  }

  /**
   * How often two things that do not differ are found to be no different within a margin, by two
   * one-sided tests (Schuirmann, Journal of Pharmacokinetics and Biopharmaceutics 15, 1987).
   *
   * @param margin above 0
   * @param standardError the true standard error of the difference, above 0
   * @param degreesOfFreedom with which it will be estimated, above 0
   * @param alpha the chance of error of either test, between 0 and 0.5
   */
  public static double equivalence(
      double margin, double standardError, double degreesOfFreedom, double alpha) {
    double factor = TDistribution.of(degreesOfFreedom).inverseSurvivalProbability(alpha);
    double room = margin / standardError;
    return Quadrature.overScale(
        degreesOfFreedom,
        0,
        room / factor,
        s -> Math.max(0, 2 * NORMAL.cumulativeProbability(room - factor * s) - 1));
  }

  /**
   * How often half an interval comes out no wider than wished.
   *
   * @param halfWidth the widest that it may be, above 0
   * @param standardError the true standard error of the estimate, above 0
   * @param degreesOfFreedom with which it will be estimated, above 0
   * @param factor by which it is multiplied for half the interval
   */
  public static double narrowness(
      double halfWidth, double standardError, double degreesOfFreedom, double factor) {
    double ratio = halfWidth / (factor * standardError);
    return ChiSquaredDistribution.of(degreesOfFreedom)
        .cumulativeProbability(degreesOfFreedom * ratio * ratio);
  }
}
