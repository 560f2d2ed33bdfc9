package fairboil.ingest.choice;

/** How fuel reached the fire; the two are never pooled. */
public enum Feed implements Choice {
  /** Loaded once, lit from the top. */
  BATCH("batch"),
  /** Added to while burning. */
  FED("fed");

  private final String label;

  Feed(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
