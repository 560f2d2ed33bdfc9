package fairboil.analysis.precision;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import java.util.OptionalDouble;

/**
 * A scatter of a measure, as a standard deviation with its interval.
 *
 * @param measure the measure
 * @param level where the scatter comes from
 * @param design the design that it is of; empty text for all builds together
 * @param sd the standard deviation, at least 0, in the unit of a difference; 0 between builds means
 *     that none is seen, up to the high end of the interval
 * @param interval at the study's confidence
 * @param degreesOfFreedom of the mean square that it stands on
 * @param relative the standard deviation over the mean; empty for temperatures, which have no
 *     natural zero
 * @param limit the difference that two runs of one stove exceed only once in twenty times (ISO
 *     5725-6:1994, 4.1.4: 2.8 standard deviations); only for scatter between runs
 * @param runs how many runs it stands on
 * @param builds how many builds
 */
public record Repeatability(
    Measure measure,
    Level level,
    String design,
    double sd,
    Interval interval,
    int degreesOfFreedom,
    OptionalDouble relative,
    OptionalDouble limit,
    int runs,
    int builds) {

  /** Where scatter comes from. */
  public enum Level {
    /** Run to run, on the same stove. */
    RUN_TO_RUN("run to run"),
    /** Build to build, beyond that. */
    BUILD_TO_BUILD("build to build");

    private final String label;

    Level(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }
  }
}
