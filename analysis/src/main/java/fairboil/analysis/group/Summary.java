package fairboil.analysis.group;

import fairboil.analysis.figure.Deviations;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The mean of a measure over runs, with its interval.
 *
 * @param n how many runs it stands on, at least 1
 * @param mean their mean
 * @param sd their standard deviation (n − 1), in the unit of a difference; empty for one run
 * @param interval the interval of the mean at the study's confidence (Student's t, n − 1 degrees of
 *     freedom); empty for one run, and where all are the same: they have no scatter to judge by
 */
public record Summary(int n, double mean, OptionalDouble sd, Optional<Interval> interval) {

  /**
   * The summary of some values.
   *
   * @param values at least one
   * @param confidence between 0 and 1
   */
  public static Summary of(double[] values, double confidence) {
    double mean = Arrays.stream(values).average().orElseThrow();
    int n = values.length;
    if (n == 1) {
      return new Summary(1, mean, OptionalDouble.empty(), Optional.empty());
    }
    double sd = Math.sqrt(Deviations.squares(values) / (n - 1));
    double halfWidth = Measured.coverageFactor(confidence, n - 1.0) * sd / Math.sqrt(n);
    Interval interval = Interval.around(mean, halfWidth);
    return new Summary(
        n,
        mean,
        OptionalDouble.of(sd),
        interval.isPoint() ? Optional.empty() : Optional.of(interval));
  }
}
