package fairboil.ingest.sheet;

/**
 * A ring of holes, or a pattern on the base, as intended.
 *
 * @param study the study that it belongs to
 * @param row its row of {@link RingsSheet}
 */
public record Ring(String study, Row row) {

  /** The name of the ring, as {@code holes.csv} gives it. */
  public String name() {
    return row.get(RingsSheet.RING);
  }

  /** Whether all that was given of it could be read; else nothing may be made of it. */
  public boolean isLegible() {
    return row.illegible().isEmpty();
  }

  /** Whether this row describes a ring of that build: it names it, or its design, or neither. */
  public boolean isOf(Build build) {
    return build.key().study().equals(study)
        && row.value(RingsSheet.BUILD).map(build.key().name()::equals).orElse(true)
        && row.value(RingsSheet.DESIGN).map(name -> isDesign(name, build)).orElse(true);
  }

  private static boolean isDesign(String name, Build build) {
    return build.design().filter(name::equals).isPresent();
  }
}
