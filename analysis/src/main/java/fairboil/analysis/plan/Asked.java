package fairboil.analysis.plan;

import fairboil.analysis.measure.Measure;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a person asked of a plan. Scatter and sizes are in the unit of a difference of the measure.
 *
 * @param measure what is measured; a measure of runs
 * @param wishes what is wanted, at most one of a kind; unmodifiable, empty for an example
 * @param power how often it is wanted to come true, between 0.5 and 1
 * @param burnSd the stated scatter from burn to burn; empty to take that of the study
 * @param stoveSd the stated scatter from stove to stove; empty to take that of the study
 * @param largestHoleError the largest hole error to drill on purpose, m; empty to take the largest
 *     of the study
 * @param builds how many builds the running order is to have; empty for as many as are needed
 * @param runs how often each is to be burnt; empty for as often as is advised
 * @param sites where the stoves are to be sent round to; unmodifiable, empty for one place
 */
public record Asked(
    Measure measure,
    List<Wish> wishes,
    double power,
    OptionalDouble burnSd,
    OptionalDouble stoveSd,
    OptionalDouble largestHoleError,
    OptionalInt builds,
    OptionalInt runs,
    List<String> sites) {

  /** Copies the lists and checks that the measure is one of runs. */
  public Asked {
    wishes = List.copyOf(wishes);
    sites = List.copyOf(sites);
    if (measure.level() != Measure.Level.RUN) {
      throw new IllegalArgumentException(measure.label() + " is not a measure of runs");
    }
    if (!(power >= 0.5) || !(power < 1)) {
      throw new IllegalArgumentException("not a power: " + power);
    }
  }
}
