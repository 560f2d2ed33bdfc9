package fairboil.analysis.model;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The largest of several t statistics that share one reference, without regard to sign (Dunnett,
 * Journal of the American Statistical Association 50, 1955). Immutable.
 */
public final class Dunnett {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private final double[] loadings;
  private final double degreesOfFreedom;

  /**
   * The distribution for groups of the given sizes.
   *
   * @param reference the size of the reference, at least 1
   * @param others the size of each other group
   * @param degreesOfFreedom of the pooled variance, at least 1
   */
  public Dunnett(double reference, double[] others, double degreesOfFreedom) {
    this.loadings = Arrays.stream(others).map(n -> Math.sqrt(n / (n + reference))).toArray();
    this.degreesOfFreedom = degreesOfFreedom;
  }

  /** The probability that no statistic exceeds {@code t} without regard to sign. */
  public double cumulativeProbability(double t) {
    if (!(t > 0)) {
      return 0;
    }
    double probability =
        Quadrature.overScale(
            degreesOfFreedom, s -> Quadrature.overNormal(z -> allWithin(t * s, z)));
    return Math.max(0, Math.min(1, probability));
  }

  /** The value that none exceeds with the given probability, between 0 and 1. */
  public double inverseCumulativeProbability(double probability) {
    return Root.ofIncreasing(this::cumulativeProbability, probability, 0, 4);
  }

  private double allWithin(double limit, double reference) {
    double product = 1;
    for (double loading : loadings) {
      double rest = Math.sqrt(1 - loading * loading);
      product *=
          NORMAL.cumulativeProbability((loading * reference + limit) / rest)
              - NORMAL.cumulativeProbability((loading * reference - limit) / rest);
    }
    return product;
  }
}
