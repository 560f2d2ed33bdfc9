package fairboil.analysis.effect;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.SlopePermutation;
import fairboil.analysis.model.TheilSen;
import fairboil.ingest.sheet.Key;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a hole effect can be trusted: the same question asked in other ways. Slopes are per metre
 * of RMS hole error, of the points that the answer stands on.
 *
 * @param response the measure that responds
 * @param ring the name of the ring
 * @param confidence of each interval of this effect, between 0 and 1: above the study's where
 *     several rings are asked about
 * @param ambientCorrelation correlation of a build's mean ambient with its hole error, from −1 to
 *     1; empty if an ambient is not known or does not differ
 * @param areaCorrelation correlation of RMS hole error with the error of the open area, likewise
 * @param theilSen the median of the slopes between pairs of builds
 * @param permutation how often dealing out the hole errors anew, within designs, gives a slope as
 *     steep; empty if no design has two builds
 * @param exactness whether that share is exact
 * @param withoutEachBuild the slope with each build left out in turn; unmodifiable
 * @param curvature the quadratic term beside a line, from six builds
 * @param smallestSlope the slope, up or down, that a study like this would find with a chance of 80
 *     %
 * @param readingTakenOut the slope with the error of reading hole positions taken out: of each RMS,
 *     and of the flattening that its scatter causes
 * @param withExcluded the answer with the runs that the sheet excludes, where there are any
 * @param hardestRun the slope without the run that pulls hardest on it, where runs can be told
 * @param allRings the slope beside those of the other rings in one line, where several are asked
 *     about and there are builds enough
 */
public record EffectChecks(
    Measure response,
    String ring,
    double confidence,
    OptionalDouble ambientCorrelation,
    OptionalDouble areaCorrelation,
    Optional<TheilSen> theilSen,
    Optional<SlopePermutation> permutation,
    Exactness exactness,
    List<WithoutBuild> withoutEachBuild,
    Optional<EffectRow> curvature,
    OptionalDouble smallestSlope,
    Optional<EffectRow> readingTakenOut,
    Optional<EffectRow> withExcluded,
    Optional<WithoutRun> hardestRun,
    Optional<AllRings> allRings) {

  private static final double TOGETHER = 0.5;
  private static final double INSEPARABLE = 0.7;

  /** Copies the list. */
  public EffectChecks {
    withoutEachBuild = List.copyOf(withoutEachBuild);
  }

  /** Whether builds with larger hole errors were burnt in plainly other air. */
  public boolean wentWithAmbient() {
    return Math.abs(ambientCorrelation.orElse(0)) > TOGETHER;
  }

  /** Whether hole position and open area went wrong so alike that they cannot be separated. */
  public boolean wentWithOpenArea() {
    return Math.abs(areaCorrelation.orElse(0)) > INSEPARABLE;
  }

  /**
   * The slope without one build.
   *
   * @param build the build left out
   * @param cook Cook's distance of the build, at least 0, infinite if it alone decides the slope
   * @param slope the slope without it
   * @param interval its interval
   */
  public record WithoutBuild(Key build, double cook, double slope, Interval interval) {}

  /**
   * The slope without one run.
   *
   * @param run the run left out
   * @param slope the slope without it
   * @param interval its interval
   */
  public record WithoutRun(Key run, double slope, Interval interval) {}

  /**
   * The slope of one ring beside those of the others.
   *
   * @param row the slope
   * @param inflation how many times the variance of the slope is what it would be if the rings had
   *     nothing in common, at least 1
   */
  public record AllRings(EffectRow row, double inflation) {}

  /** Whether a permutation test is exact. */
  public enum Exactness {
    /** All builds have as many burns. */
    EXACT("exact"),
    /**
     * Builds have different numbers of burns, covariates are allowed for, or deals were sampled.
     */
    APPROXIMATE("approximate");

    private final String label;

    Exactness(String label) {
      this.label = label;
    }

    /** The word that people see. */
    public String label() {
      return label;
    }
  }
}
