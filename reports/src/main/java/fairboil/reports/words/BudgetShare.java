package fairboil.reports.words;

import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.figure.Shape;
import fairboil.ingest.sheet.Key;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How much of the variance of a figure one source of uncertainty makes up. Several lines of one
 * source, such as those of the boil time, are told as one.
 *
 * @param influence the source
 * @param sharedBy the instrument whose readings share it; empty for an independent one
 * @param shape the distribution that it stands for
 * @param contribution its part of the standard uncertainty, in the unit of the figure as a
 *     difference
 * @param share of the variance, from 0 to 1; all of one figure add up to 1
 */
public record BudgetShare(
    Influence influence, Optional<Key> sharedBy, Shape shape, double contribution, double share) {

  /** The shares of a figure, the largest first; none of one that is not known. */
  public static List<BudgetShare> of(Figure figure) {
    double variance = Math.pow(figure.budget().combined(), 2);
    Map<List<Object>, BudgetLine> told = new LinkedHashMap<>();
    figure.budget().lines().stream()
        .filter(line -> line.contribution() > 0)
        .forEach(
            line ->
                told.merge(
                    List.of(line.influence(), line.sharedBy(), line.shape()),
                    line,
                    BudgetShare::together));
    return told.values().stream()
        .map(line -> of(line, variance))
        .sorted(Comparator.comparingDouble(BudgetShare::share).reversed())
        .toList();
  }

  private static BudgetLine together(BudgetLine one, BudgetLine other) {
    return one.scaledBy(Math.hypot(one.contribution(), other.contribution()) / one.contribution());
  }

  private static BudgetShare of(BudgetLine line, double variance) {
    return new BudgetShare(
        line.influence(),
        line.sharedBy(),
        line.shape(),
        line.contribution(),
        line.contribution() * line.contribution() / variance);
  }

  /** Whether it is shared, and so does not average out over runs. */
  public boolean isShared() {
    return sharedBy.isPresent();
  }

  /** What it comes from. */
  public String source() {
    return Labels.of(influence);
  }

  /** The share in percent. */
  public String percent() {
    return HeatWords.share(100 * share) + "\u00a0%";
  }
}
