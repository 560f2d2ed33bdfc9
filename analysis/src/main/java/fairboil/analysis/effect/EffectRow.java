package fairboil.analysis.effect;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.model.Regressors;
import java.util.OptionalDouble;

/**
 * One row of a hole effect: one term of one model. Slopes are per metre of RMS hole error.
 *
 * @param model how it was estimated
 * @param term {@code hole error}, {@code intercept}, {@code design} with its name, or the name of a
 *     covariate
 * @param estimate the estimate
 * @param standardError its standard error
 * @param degreesOfFreedom the degrees of freedom of the interval
 * @param interval the interval at the study's confidence
 * @param pValue two-sided p-value against 0: for the table, never printed bare
 * @param runs how many runs it stands on
 * @param builds how many builds it stands on
 */
public record EffectRow(
    Model model,
    String term,
    double estimate,
    double standardError,
    double degreesOfFreedom,
    Interval interval,
    OptionalDouble pValue,
    int runs,
    int builds) {

  /** The term that is the hole effect itself. */
  public static final String HOLE_ERROR = "hole error";

  /** The term that is the change for each kelvin of ambient. */
  public static final String AMBIENT = "ambient";

  /** What the term of a design begins with; the name of the design follows. */
  public static final String DESIGN = "design ";

  /** The term that is the bend of a line, in checks only. */
  public static final String CURVATURE = "hole error squared";

  /** The term that is the response at no hole error. */
  public static final String INTERCEPT = Regressors.INTERCEPT;

  /** The same row as that of another model. */
  EffectRow by(Model other) {
    return new EffectRow(
        other, term, estimate, standardError, degreesOfFreedom, interval, pValue, runs, builds);
  }

  /** How an effect was estimated. */
  public enum Model {
    /** Weighted least squares on the means of builds: the unit is the stove. */
    BUILD_MEANS("build means"),
    /** The same, with the effect of ambient estimated within builds taken out. */
    AMBIENT_ADJUSTED("ambient adjusted"),
    /** A mixed model by REML, for comparison. */
    MIXED("mixed"),
    /** The holes of all rings asked about in one line on the means of builds. */
    ALL_RINGS("all rings"),
    /** A line through all burns as if each were a stove: what not to claim. */
    BURN_LEVEL("burn level");

    private final String label;

    Model(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }
  }
}
