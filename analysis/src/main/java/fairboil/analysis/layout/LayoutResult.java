package fairboil.analysis.layout;

import fairboil.analysis.fault.Fault;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Key;
import java.util.List;
import java.util.Optional;

/**
 * The rings of all builds of a study.
 *
 * @param rings one result for each build and ring of which holes were measured, in the order of
 *     builds, then of rings; unmodifiable
 * @param findings what a reader should know of rings and holes; unmodifiable
 * @param faults rings at which the program failed; unmodifiable
 */
public record LayoutResult(List<RingResult> rings, List<Finding> findings, List<Fault> faults) {

  /** Copies the lists. */
  public LayoutResult {
    rings = List.copyOf(rings);
    findings = List.copyOf(findings);
    faults = List.copyOf(faults);
  }

  /** The rings of a study at none of which the program failed. */
  public LayoutResult(List<RingResult> rings, List<Finding> findings) {
    this(rings, findings, List.of());
  }

  /** The ring of that name of that build, if its holes were measured. */
  public Optional<RingResult> ring(Key build, String name) {
    return rings.stream()
        .filter(ring -> ring.build().equals(build) && ring.ring().equals(name))
        .findFirst();
  }
}
