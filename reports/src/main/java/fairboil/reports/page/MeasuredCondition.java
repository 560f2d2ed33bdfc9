package fairboil.reports.page;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.quantity.Dimension;
import fairboil.reports.words.Display;
import java.util.List;
import java.util.function.Function;

/**
 * A condition that is a number.
 *
 * @param label what people call it
 * @param display how its values are shown
 * @param dimension what its values are values of
 * @param figure how to get it
 */
record MeasuredCondition(
    String label, Display display, Dimension dimension, Function<RunResult, Figure> figure)
    implements Condition {

  @Override
  public boolean isRecorded(RunResult run) {
    return figure.apply(run).isKnown();
  }

  @Override
  public String over(List<RunResult> runs) {
    double[] values = sorted(runs);
    return values.length == 0 ? "" : range(values) + Condition.notTold(runs, values.length);
  }

  private String range(double[] sorted) {
    double low = sorted[0];
    double high = sorted[sorted.length - 1];
    String highest = display.value(high, coarseness(), dimension);
    String lowest = display.value(low, coarseness(), dimension);
    return lowest.equals(highest)
        ? highest
        : display.number(low, coarseness(), dimension) + " to " + highest;
  }

  /** Whole degrees are enough for the weather; other things to three digits. */
  private double coarseness() {
    return dimension == Dimension.TEMPERATURE ? 3 : 0;
  }

  @Override
  public boolean overlap(List<RunResult> some, List<RunResult> others) {
    double[] a = sorted(some);
    double[] b = sorted(others);
    return a[0] <= b[b.length - 1] && b[0] <= a[a.length - 1];
  }

  private double[] sorted(List<RunResult> runs) {
    return runs.stream()
        .map(figure)
        .filter(Figure::isKnown)
        .mapToDouble(Figure::orNaN)
        .sorted()
        .toArray();
  }
}
