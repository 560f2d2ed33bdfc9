package fairboil.analysis.plan;

import java.util.OptionalInt;

/**
 * One source of scatter, as a plan reckons with it: standard deviations, in the unit of a
 * difference of the measure.
 *
 * @param origin where it comes from
 * @param estimate the estimate; 0 where none was seen
 * @param upper its upper 80 % limit, at least 0; the estimate itself where it was stated
 * @param degreesOfFreedom of the estimate; empty where it was stated
 */
public record Spread(Origin origin, double estimate, double upper, OptionalInt degreesOfFreedom) {

  /** Where a scatter comes from. */
  public enum Origin {
    /** The runs of the study. */
    STUDY("from the study"),
    /** The runs of the study, which show none: 0 is never reckoned with. */
    NOT_SEEN("not seen in the study"),
    /** A person said so. */
    STATED("stated");

    private final String label;

    Origin(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }
  }

  /** Checks the range. */
  public Spread {
    if (!(estimate >= 0) || !(upper >= 0) || Double.isInfinite(upper)) {
      throw new IllegalArgumentException("not a scatter: " + estimate + ", up to " + upper);
    }
  }

  /** A scatter that a person stated, at least 0. */
  public static Spread stated(double sd) {
    return new Spread(Origin.STATED, sd, sd, OptionalInt.empty());
  }

  static Spread estimated(double estimate, double upper, int degreesOfFreedom) {
    return new Spread(
        estimate > 0 ? Origin.STUDY : Origin.NOT_SEEN,
        estimate,
        upper,
        OptionalInt.of(degreesOfFreedom));
  }

  /** What is reckoned with: never an estimate of 0. */
  public double at(Basis basis) {
    return basis == Basis.UPPER_LIMIT || origin == Origin.NOT_SEEN ? upper : estimate;
  }
}
