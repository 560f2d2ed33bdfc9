package fairboil.analysis.group;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;

/**
 * What normalising did to boil times: the runs of which boil time, normalised boil time, ambient
 * and water are known and count.
 *
 * @param runs those runs, in the order of the study; unmodifiable
 * @param failed how many more have no boil time because their water did not boil
 */
public record Restating(List<RunResult> runs, int failed) {

  private static final int FEWEST = 3;

  /** Copies the list. */
  public Restating {
    runs = List.copyOf(runs);
  }

  /** Of those of the given runs that have all four. */
  public static Restating of(List<RunResult> runs) {
    return new Restating(
        runs.stream()
            .filter(run -> Measure.BOIL_TIME.counted(run).isPresent())
            .filter(run -> Measure.NORMALISED_BOIL_TIME.counted(run).isPresent())
            .filter(run -> run.conditions().ambient().isKnown())
            .filter(run -> run.conditions().water().isKnown())
            .toList(),
        (int) runs.stream().filter(Measure.BOIL_TIME::isHidden).count());
  }

  /**
   * Whether there is anything to see: at least {@value #FEWEST} runs, in conditions that differ by
   * more than they are uncertain by.
   */
  public boolean canBeSeen() {
    return runs.size() >= FEWEST
        && (differs(run -> run.conditions().ambient()) || differs(run -> run.conditions().water()));
  }

  private boolean differs(Function<RunResult, Figure> condition) {
    double spread = new StandardDeviation().evaluate(values(run -> condition.apply(run).orNaN()));
    double uncertainty =
        runs.stream()
            .map(condition)
            .flatMap(figure -> figure.ifKnown().stream())
            .mapToDouble(Measured::standardUncertainty)
            .average()
            .orElse(0);
    return spread > uncertainty;
  }

  /** Standard deviation of a time over all runs of all builds together, s. */
  public double scatter(Measure time) {
    return new StandardDeviation().evaluate(values(run -> time.of(run).orNaN()));
  }

  /** Pearson's correlation of a time with the ambient; empty if either does not differ. */
  public OptionalDouble withAmbient(Measure time) {
    return correlation(time, run -> run.conditions().ambient());
  }

  /** Pearson's correlation of a time with the mass of water; empty if either does not differ. */
  public OptionalDouble withWater(Measure time) {
    return correlation(time, run -> run.conditions().water());
  }

  private OptionalDouble correlation(Measure time, Function<RunResult, Figure> condition) {
    double found =
        new PearsonsCorrelation()
            .correlation(
                values(run -> condition.apply(run).orNaN()), values(run -> time.of(run).orNaN()));
    return Double.isFinite(found) && differs(condition)
        ? OptionalDouble.of(found)
        : OptionalDouble.empty();
  }

  private double[] values(ToDoubleFunction<RunResult> value) {
    return runs.stream().mapToDouble(value).toArray();
  }
}
