package fairboil.analysis.compare;

import fairboil.analysis.group.BoilCount;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.RankSum;

/**
 * Two things compared by rank, because some of their runs did not boil: those count as longer than
 * any that did. Runs of which nobody saw it are not ranked.
 *
 * @param measure a time to the boil
 * @param level what is compared, as in {@link Comparison}
 * @param a the first
 * @param b the second
 * @param boilsA in how many runs of the first the water boiled
 * @param boilsB in how many runs of the second
 * @param unit what was ranked for the p-value of the test
 * @param test the test; its superiority is the share of pairs of runs in which the first took
 *     longer, whatever the unit
 */
public record RankComparison(
    Measure measure,
    String level,
    String a,
    String b,
    BoilCount boilsA,
    BoilCount boilsB,
    Unit unit,
    RankSum test) {

  /** What was ranked. */
  public enum Unit {
    /** Runs of two very stoves. */
    RUNS("runs"),
    /** Builds, by the median of their runs: a rank-sum test. */
    BUILDS("builds"),
    /** Builds that have both, by which of their medians is longer: a sign test. */
    WITHIN_BUILDS("within builds");

    private final String label;

    Unit(String label) {
      this.label = label;
    }

    /** The words that people see. */
    public String label() {
      return label;
    }
  }
}
