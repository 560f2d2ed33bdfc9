package fairboil.analysis.protocol;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.precision.Repeatability;
import java.util.List;

/**
 * The results without the runs that did not keep to what was agreed; each list as that of {@code
 * Results}.
 *
 * @param runs how many runs are left, at least 1
 * @param builds means of builds
 * @param holeEffects hole effects
 * @param repeatability scatter
 * @param claims claims
 */
public record Without(
    int runs,
    List<BuildResult> builds,
    List<HoleEffect> holeEffects,
    List<Repeatability> repeatability,
    List<ClaimResult> claims) {

  /** Copies the lists. */
  public Without {
    builds = List.copyOf(builds);
    holeEffects = List.copyOf(holeEffects);
    repeatability = List.copyOf(repeatability);
    claims = List.copyOf(claims);
  }
}
