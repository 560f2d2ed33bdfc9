package fairboil.analysis.model;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The studentised range: the range of {@code k} independent normal means over an estimate of their
 * standard deviation (Tukey; Hochberg and Tamhane, Multiple Comparison Procedures, 1987, appendix
 * 3.1).
 *
 * @param means how many means, at least 2
 * @param degreesOfFreedom of the estimate, at least 1; infinite if it is known
 */
public record StudentizedRange(int means, double degreesOfFreedom) {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Checks the ranges. */
  public StudentizedRange {
    if (means < 2 || !(degreesOfFreedom >= 1)) {
      throw new IllegalArgumentException(
          "no studentised range of " + means + " means, df " + degreesOfFreedom);
    }
  }

  /** The probability of a range up to {@code q}; good to about 1e-10. */
  public double cumulativeProbability(double q) {
    if (!(q > 0)) {
      return 0;
    }
    double probability = Quadrature.overScale(degreesOfFreedom, s -> ofRange(q * s));
    return Math.max(0, Math.min(1, probability));
  }

  /** The range that is not exceeded with the given probability, between 0 and 1. */
  public double inverseCumulativeProbability(double probability) {
    return Root.ofIncreasing(this::cumulativeProbability, probability, 0, 8);
  }

  /** The probability that the range of standard normal means is up to {@code w}. */
  private double ofRange(double w) {
    double reach = Quadrature.NORMAL_REACH;
    return means
        * Quadrature.integrate(
            z ->
                NORMAL.density(z)
                    * Math.pow(
                        NORMAL.cumulativeProbability(z) - NORMAL.cumulativeProbability(z - w),
                        means - 1),
            -reach,
            reach,
            8);
  }
}
