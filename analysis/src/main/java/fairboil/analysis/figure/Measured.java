package fairboil.analysis.figure;

import fairboil.ingest.dimension.Dimension;
import java.util.Objects;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * A measured value with its standard uncertainty, as JCGM 100:2008 (GUM) defines it.
 *
 * @param value the estimate, in the unit in which the dimension is held; finite
 * @param standardUncertainty its standard uncertainty, at least 0, in the unit of a difference
 * @param degreesOfFreedom the (effective) degrees of freedom of the uncertainty, above 0; infinite
 *     where the uncertainty is known well
 * @param dimension what it is a value of
 */
public record Measured(
    double value, double standardUncertainty, double degreesOfFreedom, Dimension dimension) {

  /** Checks the ranges. */
  public Measured {
    Objects.requireNonNull(dimension, "dimension");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite value: " + value);
    }
    if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
      throw new IllegalArgumentException("not a standard uncertainty: " + standardUncertainty);
    }
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException("not degrees of freedom: " + degreesOfFreedom);
    }
  }

  /** A value taken as exact. */
  public static Measured exact(double value, Dimension dimension) {
    return new Measured(value, 0, Double.POSITIVE_INFINITY, dimension);
  }

  /** A value whose standard uncertainty is well known. */
  public static Measured of(double value, double standardUncertainty, Dimension dimension) {
    return new Measured(value, standardUncertainty, Double.POSITIVE_INFINITY, dimension);
  }

  /**
   * The expanded uncertainty {@code U = k u}, with the coverage factor {@code k} of Student's t for
   * the degrees of freedom (JCGM 100:2008, G.3.2; not truncated to an integer).
   *
   * @param confidence the level of confidence, between 0 and 1
   */
  public double expandedUncertainty(double confidence) {
    return coverageFactor(confidence, degreesOfFreedom) * standardUncertainty;
  }

  /** The interval {@code value ± U}. */
  public Interval interval(double confidence) {
    return Interval.around(value, expandedUncertainty(confidence));
  }

  /**
   * The coverage factor {@code k} of a two-sided interval: the quantile of Student's t at {@code (1
   * + confidence) / 2}.
   *
   * @param confidence the level of confidence, between 0 and 1
   * @param degreesOfFreedom above 0; infinite gives the quantile of the normal distribution
   */
  public static double coverageFactor(double confidence, double degreesOfFreedom) {
    double tail = (1 + confidence) / 2;
    return Double.isInfinite(degreesOfFreedom)
        ? NormalDistribution.of(0, 1).inverseCumulativeProbability(tail)
        : TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(tail);
  }
}
