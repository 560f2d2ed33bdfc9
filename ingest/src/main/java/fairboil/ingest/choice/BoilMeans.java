package fairboil.ingest.choice;

/** What the testers agreed to call boiling. */
public enum BoilMeans implements Choice {
  /** A steady jet of steam. */
  STEADY_STEAM("steady steam"),
  /** A rolling boil. */
  ROLLING("rolling"),
  /** The first bubbles that rise. */
  FIRST_BUBBLES("first bubbles");

  private final String label;

  BoilMeans(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
