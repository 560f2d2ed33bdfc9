package fairboil.analysis.plan;

import fairboil.ingest.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A plan for the next tests.
 *
 * @param asked what was asked
 * @param answers one a wish; unmodifiable. Where none was asked, one as an example
 * @param designs how many designs are compared
 * @param levels the hole errors to drill on purpose; empty without a wished hole effect
 * @param confidence of the intervals
 * @param builds the builds of the running order; unmodifiable
 * @param runs how often each is burnt, at each site
 * @param order the running order
 * @param findings what to know beforehand; unmodifiable
 */
public record Plan(
    Asked asked,
    List<Answer> answers,
    int designs,
    Optional<HoleLevels> levels,
    double confidence,
    List<PlannedBuild> builds,
    int runs,
    RunningOrder order,
    List<Finding> findings) {

  /** Copies the lists. */
  public Plan {
    answers = List.copyOf(answers);
    builds = List.copyOf(builds);
    findings = List.copyOf(findings);
  }

  /** Whether nothing was wished, so that the answer is an example. */
  public boolean isExample() {
    return asked.wishes().isEmpty();
  }
}
