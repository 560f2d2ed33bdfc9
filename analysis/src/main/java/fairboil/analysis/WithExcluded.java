package fairboil.analysis;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.group.BuildResult;
import java.util.List;

/**
 * What would have come out had the runs that the sheet excludes been counted. The same for hole
 * effects is among their checks. Immutable.
 *
 * @param runs how many runs are left out, wholly or for one of their measures
 * @param builds one result a build, in the order of the study
 * @param claims one result a claim, in the order of the study
 * @param comparisons differences between builds, designs and conditions
 */
public record WithExcluded(
    int runs, List<BuildResult> builds, List<ClaimResult> claims, List<Comparison> comparisons) {

  /** Copies the lists. */
  public WithExcluded {
    builds = List.copyOf(builds);
    claims = List.copyOf(claims);
    comparisons = List.copyOf(comparisons);
  }
}
