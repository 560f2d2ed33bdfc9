package fairboil.analysis.compare;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import java.util.Optional;

/**
 * The difference between two things in one measure.
 *
 * @param measure the measure
 * @param level what is compared: {@code build}, {@code design} or the name of a column
 * @param a the first
 * @param b the second
 * @param difference mean of the first less mean of the second, in the unit of a difference
 * @param standardError its standard error
 * @param degreesOfFreedom of the standard error
 * @param interval at the study's confidence for all pairs of the family together
 * @param pValue of this pair alone, two-sided: for the table, never printed bare
 * @param adjustedPValue with the number of pairs allowed for
 * @param method how it was worked out
 * @param verdict what the interval says
 * @param margin the smallest difference that does not matter for which this study would have called
 *     the two no different: the end, further from 0, of the interval of two one-sided tests
 * @param effectSize Hedges' g: the difference over the standard deviation of the units compared,
 *     with its correction for small samples; 0 where that deviation is 0
 * @param effectInterval its interval, which holds 0 just where that of the difference does; of
 *     designs, conditions and against a reference, where units scatter
 */
public record Comparison(
    Measure measure,
    String level,
    String a,
    String b,
    double difference,
    double standardError,
    double degreesOfFreedom,
    Interval interval,
    double pValue,
    double adjustedPValue,
    Method method,
    Verdict verdict,
    double margin,
    double effectSize,
    Optional<Interval> effectInterval) {

  /** The level at which those very stoves are compared. */
  public static final String BUILD = "build";

  /** The level at which designs are compared, their builds being the units. */
  public static final String DESIGN = "design";

  /** How a difference was worked out. */
  public enum Method {
    /** Runs of builds, their scatter pooled over all builds. */
    TUKEY_KRAMER("Tukey-Kramer"),
    /** The same without pooling: a check that scatter is alike. */
    GAMES_HOWELL("Games-Howell"),
    /** The others against the one that claims name to compare with, scatter pooled over all. */
    DUNNETT("Dunnett"),
    /** Means of builds, their scatter pooled over all designs. */
    POOLED_BUILD_MEANS("build means, pooled"),
    /** Means of builds, not pooled. */
    WELCH_BUILD_MEANS("build means, Welch"),
    /** Differences within builds that have both. */
    WITHIN_BUILDS("within builds"),
    /** Runs of the only build that has both: about that stove only. */
    ONE_BUILD("runs of one build, Welch");

    private final String label;

    Method(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }

    /** Whether the answer stands on it; the others are checks beside it. */
    public boolean isHeadline() {
      return this != GAMES_HOWELL && this != WELCH_BUILD_MEANS && this != DUNNETT;
    }
  }

  /** What an interval says of the first beside the second. */
  public enum Verdict {
    /** The first is lower: the interval lies below 0. */
    LOWER("lower"),
    /** The first is higher: the interval lies above 0. */
    HIGHER("higher"),
    /** The interval holds 0. */
    NOT_SETTLED("not settled");

    private final String label;

    Verdict(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }

    static Verdict of(Interval interval) {
      if (interval.contains(0) || interval.isPoint()) { // without scatter nothing is settled
        return NOT_SETTLED;
      }
      return interval.high() < 0 ? LOWER : HIGHER;
    }
  }
}
