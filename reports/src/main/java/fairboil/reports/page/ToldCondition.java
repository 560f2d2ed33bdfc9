package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A condition that is told in words.
 *
 * @param label what people call it
 * @param text how to get it
 */
record ToldCondition(String label, Function<RunResult, Optional<String>> text)
    implements Condition {

  private static final int MOST_LISTED = 6;

  @Override
  public boolean isRecorded(RunResult run) {
    return text.apply(run).isPresent();
  }

  @Override
  public String over(List<RunResult> runs) {
    Map<String, Integer> counts = counts(runs);
    int told = counts.values().stream().mapToInt(Integer::intValue).sum();
    return told == 0 ? "" : list(counts) + Condition.notTold(runs, told);
  }

  private static String list(Map<String, Integer> counts) {
    if (counts.size() == 1) {
      return counts.keySet().iterator().next();
    }
    List<String> parts = new ArrayList<>();
    counts.forEach((told, count) -> parts.add(told + " × " + count));
    int more = parts.size() - MOST_LISTED;
    return more <= 0
        ? String.join(", ", parts)
        : String.join(", ", parts.subList(0, MOST_LISTED)) + " and " + more + " more";
  }

  @Override
  public boolean overlap(List<RunResult> some, List<RunResult> others) {
    return counts(some).keySet().stream().anyMatch(counts(others)::containsKey);
  }

  private Map<String, Integer> counts(List<RunResult> runs) {
    Map<String, Integer> counts = new TreeMap<>();
    runs.stream()
        .map(text)
        .flatMap(Optional::stream)
        .forEach(told -> counts.merge(told, 1, Integer::sum));
    return counts;
  }
}
