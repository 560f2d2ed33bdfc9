package fairboil.analysis.model;

import fairboil.analysis.figure.Interval;
import java.util.Optional;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * A difference in standard deviations of the units compared: Hedges' g (Journal of Educational
 * Statistics 6, 1981), with the exact correction for small samples and the interval that the
 * noncentral t distribution gives.
 *
 * @param g the difference over the standard deviation, corrected
 * @param interval its interval
 */
public record EffectSize(double g, Interval interval) {

  /**
   * The effect size behind a t statistic.
   *
   * @param difference the difference
   * @param standardError its standard error
   * @param deviation the standard deviation of a unit
   * @param degreesOfFreedom of it
   * @param confidence of the interval, between 0 and 1
   * @return empty where nothing scatters, or with no more than one degree of freedom
   */
  public static Optional<EffectSize> of(
      double difference,
      double standardError,
      double deviation,
      double degreesOfFreedom,
      double confidence) {
    if (!(standardError > 0) || !(deviation > 0) || !(degreesOfFreedom > 1)) {
      return Optional.empty();
    }
    double t = difference / standardError;
    double tail = (1 - confidence) / 2;
    double unit = correction(degreesOfFreedom) * standardError / deviation;
    return Optional.of(
        new EffectSize(
            unit * t,
            new Interval(
                unit * shift(t, degreesOfFreedom, 1 - tail),
                unit * shift(t, degreesOfFreedom, tail))));
  }

  /** How much smaller than the plain ratio the effect is, on average. */
  public static double correction(double degreesOfFreedom) {
    double half = degreesOfFreedom / 2;
    return Math.exp(LogGamma.value(half) - LogGamma.value(half - 0.5)) / Math.sqrt(half);
  }

  /** The noncentrality for which a t as large is not exceeded with the given probability. */
  private static double shift(double t, double degreesOfFreedom, double probability) {
    double reach = 10 + 2 * Math.abs(t);
    return Root.ofIncreasing(
        shift -> -ToleranceFactor.noncentralT(t, degreesOfFreedom, shift),
        -probability,
        t - reach,
        t + reach);
  }
}
