package fairboil.reports.page;

import fairboil.analysis.Results;
import fairboil.analysis.run.RunResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The runs that count, by what is compared.
 *
 * @param kind what is compared: design or build
 * @param runs the runs of each, in the order of the study
 */
record Groups(String kind, Map<String, List<RunResult>> runs) {

  /** By design where there are two, else by build. */
  static Groups of(Results results) {
    Map<String, List<RunResult>> designs =
        by(results, run -> run.build().design().orElse("no design told"));
    return designs.size() > 1
        ? new Groups("design", designs)
        : new Groups("build", by(results, run -> run.build().key().name()));
  }

  /** All runs that count. */
  List<RunResult> all() {
    return runs.values().stream().flatMap(List::stream).toList();
  }

  private static Map<String, List<RunResult>> by(
      Results results, Function<RunResult, String> name) {
    Map<String, List<RunResult>> groups = new LinkedHashMap<>();
    for (RunResult run : results.runs()) {
      if (run.inclusion().included()) {
        groups.computeIfAbsent(name.apply(run), unseen -> new ArrayList<>()).add(run);
      }
    }
    return groups;
  }
}
