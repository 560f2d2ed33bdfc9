package fairboil.analysis.compare;

import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.RankSum;

/**
 * Two things compared by rank, because some of their runs did not boil: those count as longer than
 * any that did.
 *
 * @param measure a time to the boil
 * @param level what is compared, as in {@link Comparison}
 * @param a the first
 * @param b the second
 * @param boiledA in how many runs of the first the water boiled
 * @param runsA of how many
 * @param boiledB in how many runs of the second
 * @param runsB of how many
 * @param test the rank-sum test; its superiority is the share of pairs of runs in which the first
 *     took longer
 */
public record RankComparison(
    Measure measure,
    String level,
    String a,
    String b,
    int boiledA,
    int runsA,
    int boiledB,
    int runsB,
    RankSum test) {}
