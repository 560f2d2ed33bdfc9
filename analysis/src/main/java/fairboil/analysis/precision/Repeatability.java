package fairboil.analysis.precision;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import java.util.Optional;
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
 * @param relative the coefficient of variation, which is the standard deviation over the mean of
 *     all runs; empty for temperatures, which have no natural zero
 * @param relativeInterval of the coefficient of variation: that of the standard deviation over the
 *     mean, which is taken as known. From five runs on, below 15 %, it agrees to 5 % of itself with
 *     the interval that allows for the error of the mean (Vangel, The American Statistician 50,
 *     1996); empty as above
 * @param limit the difference that two runs of one stove exceed only once in twenty times (ISO
 *     5725-6:1994, 4.1.4: 2.8 standard deviations): the limit of repeatability for scatter between
 *     runs, that of reproducibility for runs at two sites; empty for other levels
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
    Optional<Interval> relativeInterval,
    OptionalDouble limit,
    int runs,
    int builds) {

  /** The difference of two runs that is exceeded once in twenty times, in standard deviations. */
  static final double LIMIT = 2.8;

  /** The interval of the limit, empty where there is none. */
  public Optional<Interval> limitInterval() {
    return limit.isPresent()
        ? Optional.of(new Interval(LIMIT * interval.low(), LIMIT * interval.high()))
        : Optional.empty();
  }

  /** Where scatter comes from. */
  public enum Level {
    /** Run to run, on the same stove. */
    RUN_TO_RUN("run to run"),
    /** Build to build, beyond that. */
    BUILD_TO_BUILD("build to build"),
    /** Site to site, for one stove that went round. */
    BETWEEN_SITES("between sites"),
    /** Tester to tester, for one stove that went round. */
    BETWEEN_TESTERS("between testers"),
    /** The part of it that is the same for every stove that went round. */
    SITE_ALIKE("between sites, the same for every stove"),
    /** The part of it that is the same for every stove that went round. */
    TESTER_ALIKE("between testers, the same for every stove"),
    /** The part of it that differs from stove to stove. */
    SITE_BY_STOVE("between sites, other from stove to stove"),
    /** The part of it that differs from stove to stove. */
    TESTER_BY_STOVE("between testers, other from stove to stove"),
    /** A run at one site and a run of the same stove at another. */
    REPRODUCIBILITY("reproducibility"),
    /** A run by one tester and a run of the same stove by another (ISO 5725-3). */
    INTERMEDIATE("intermediate precision"),
    /** Site to site where each site has stoves of its own, several of them. */
    SITES_WITH_OWN_STOVES("between sites with own stoves"),
    /** Tester to tester where each tester has stoves of their own, several of them. */
    TESTERS_WITH_OWN_STOVES("between testers with own stoves"),
    /** Site to site where each site burns one stove of its own: two things in one. */
    SITE_AND_STOVE("site and stove together"),
    /** Tester to tester where each tester burns one stove of their own: two things in one. */
    TESTER_AND_STOVE("tester and stove together");

    private final String label;

    Level(String label) {
      this.label = label;
    }

    /** The same level, of testers instead of sites. */
    Level ofTesters() {
      return switch (this) {
        case BETWEEN_SITES -> BETWEEN_TESTERS;
        case SITE_ALIKE -> TESTER_ALIKE;
        case SITE_BY_STOVE -> TESTER_BY_STOVE;
        case REPRODUCIBILITY -> INTERMEDIATE;
        case SITES_WITH_OWN_STOVES -> TESTERS_WITH_OWN_STOVES;
        case SITE_AND_STOVE -> TESTER_AND_STOVE;
        default -> this;
      };
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }
  }
}
