package fairboil.analysis.group;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Runs taken together: those that count, in the order of the study. Immutable. */
public final class RunGroup {

  private final List<RunResult> runs;

  private RunGroup(List<RunResult> runs) {
    this.runs = List.copyOf(runs);
  }

  /** The included ones of the given runs. */
  public static RunGroup of(List<RunResult> runs) {
    return new RunGroup(runs.stream().filter(run -> run.inclusion().included()).toList());
  }

  /** All given runs, as if none had been excluded; but for those that the program lost. */
  public static RunGroup withExcluded(List<RunResult> runs) {
    return new RunGroup(
        runs.stream()
            .filter(run -> !run.inclusion().isLost())
            .map(RunResult::asIfIncluded)
            .toList());
  }

  /** The runs; unmodifiable. */
  public List<RunResult> runs() {
    return runs;
  }

  /** How many runs there are. */
  public int size() {
    return runs.size();
  }

  /** In how many of them the water boiled, did not, or was not seen. */
  public BoilCount boils() {
    return BoilCount.of(runs);
  }

  /** The runs that meet a condition. */
  public RunGroup where(Predicate<RunResult> condition) {
    return new RunGroup(runs.stream().filter(condition).toList());
  }

  /** The runs of each build, builds in the order of their first run; unmodifiable lists. */
  public Map<Key, RunGroup> byBuild() {
    Map<Key, List<RunResult>> byBuild = new LinkedHashMap<>();
    for (RunResult run : runs) {
      byBuild.computeIfAbsent(run.build().key(), key -> new ArrayList<>()).add(run);
    }
    Map<Key, RunGroup> groups = new LinkedHashMap<>();
    byBuild.forEach((build, own) -> groups.put(build, new RunGroup(own)));
    return groups;
  }

  /**
   * Whether a mean of the measure would leave out runs that failed, and so be one of survivors.
   *
   * @see Measure#isHidden
   */
  public boolean hidesFailures(Measure measure) {
    return hidden(measure) > 0;
  }

  /** How many runs that count for a measure lack it because their water did not boil. */
  public int hidden(Measure measure) {
    return (int) runs.stream().filter(measure::isHidden).count();
  }

  /** The known figures that count for a measure, in the order of the runs. */
  public List<Figure.Known> figures(Measure measure) {
    return runs.stream().map(measure::counted).flatMap(Optional::stream).toList();
  }

  /**
   * The values to take a mean of: none where the mean would hide failures.
   *
   * @see #hidesFailures
   */
  public double[] values(Measure measure) {
    return hidesFailures(measure)
        ? new double[0]
        : figures(measure).stream().mapToDouble(known -> known.measured().value()).toArray();
  }
}
