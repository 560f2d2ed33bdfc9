package fairboil.reports.template;

import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.RunningOrder.Block;
import fairboil.ingest.Study;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A burn of the next tests, in its place in the running order.
 *
 * @param order its place, from 1
 * @param block its block: a day, or days that follow each other
 * @param site where, if there are several sites
 * @param build the stove to burn
 * @param name a name for it that no run of the study has
 */
public record PlannedRun(int order, int block, Optional<String> site, String build, String name) {

  /** The burns of a plan in their order. */
  public static List<PlannedRun> of(Study study, Plan plan) {
    Set<String> taken = new HashSet<>();
    study.runs().forEach(run -> taken.add(run.key().name()));
    List<PlannedRun> runs = new ArrayList<>();
    for (Block block : plan.order().blocks()) {
      for (String build : block.builds()) {
        String name = freeName(build, taken);
        runs.add(new PlannedRun(runs.size() + 1, block.number(), block.site(), build, name));
      }
    }
    return List.copyOf(runs);
  }

  private static String freeName(String build, Set<String> taken) {
    int number = 1;
    while (!taken.add(build + "-" + number)) {
      number++;
    }
    return build + "-" + number;
  }
}
