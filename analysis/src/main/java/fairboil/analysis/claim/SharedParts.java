package fairboil.analysis.claim;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What instruments add to the uncertainty of a mean of build means. One instrument errs alike in
 * all its readings, so its parts add up; several instruments, as those of several sites, err
 * independently of each other. Immutable.
 */
final class SharedParts {

  /** What errs alike: one influence of one instrument. */
  private record Source(Key instrument, Influence influence) {}

  /** The weight of the runs that a source is in, and its standard uncertainty times that weight. */
  private record Part(double weight, double sum) {

    Part plus(Part other) {
      return new Part(weight + other.weight, sum + other.sum);
    }
  }

  private static final Part NONE = new Part(0, 0);

  private final Map<Source, Part> parts = new LinkedHashMap<>();

  private SharedParts() {}

  /** Those of a mean in which each build counts alike, by the mean of its runs. */
  static SharedParts of(RunGroup runs, Measure measure) {
    Map<Key, Integer> counts = new HashMap<>();
    for (RunResult run : runs.runs()) {
      if (measure.counted(run).isPresent()) {
        counts.merge(run.run().build(), 1, Integer::sum);
      }
    }
    SharedParts shared = new SharedParts();
    for (RunResult run : runs.runs()) {
      measure
          .counted(run)
          .ifPresent(
              known ->
                  shared.add(
                      known.budget(),
                      1.0
                          / (counts.size()
                              * Objects.requireNonNull(counts.get(run.run().build())))));
    }
    return shared;
  }

  private void add(Budget budget, double weight) {
    for (BudgetLine line : budget.lines()) {
      line.sharedBy()
          .ifPresent(
              instrument ->
                  parts.merge(
                      new Source(instrument, line.influence()),
                      new Part(weight, weight * line.contribution()),
                      Part::plus));
    }
  }

  /** Standard uncertainty of the mean from all of them. */
  double size() {
    return Math.sqrt(parts.values().stream().mapToDouble(part -> part.sum * part.sum).sum());
  }

  /**
   * Standard uncertainty that is left in the difference from another mean: what an instrument adds
   * to both cancels, as far as it has the same weight in both.
   */
  double apart(SharedParts other) {
    Set<Source> all = new LinkedHashSet<>(parts.keySet());
    all.addAll(other.parts.keySet());
    double squares = 0;
    for (Source source : all) {
      Part one = parts.getOrDefault(source, NONE);
      Part two = other.parts.getOrDefault(source, NONE);
      Part both = one.plus(two);
      double left = (one.weight - two.weight) * both.sum / both.weight;
      squares += left * left;
    }
    return Math.sqrt(squares);
  }
}
