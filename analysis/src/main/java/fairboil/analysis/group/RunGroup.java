package fairboil.analysis.group;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Runs taken together: those that count, in the order of the study. Immutable. */
public final class RunGroup {

  /** Times to the boil: their mean says nothing where some runs did not boil. */
  private static final Set<Measure> TIMES_TO_BOIL =
      EnumSet.of(Measure.BOIL_TIME, Measure.NORMALISED_BOIL_TIME, Measure.LIT_TO_BOIL);

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

  /** In how many of them the water boiled. */
  public int boiled() {
    return (int) runs.stream().filter(RunResult::boiled).count();
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
   * Whether a mean of the measure would leave out the runs that failed: it is a time to the boil,
   * and some run that counts for it did not boil.
   */
  public boolean hidesFailures(Measure measure) {
    return TIMES_TO_BOIL.contains(measure) && failures() > 0;
  }

  /** How many runs that count for their boil did not boil. */
  public int failures() {
    return (int)
        runs.stream()
            .filter(run -> run.inclusion().includedForBoil())
            .filter(run -> run.outcome().isPresent() && !run.boiled())
            .count();
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
