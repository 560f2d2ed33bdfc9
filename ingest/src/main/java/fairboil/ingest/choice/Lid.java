package fairboil.ingest.choice;

/** Whether the pot was covered. */
public enum Lid implements Choice {
  /** Lid on, loose. */
  ON("on"),
  /** No lid. */
  OFF("off"),
  /** Partly covered. */
  PART("part");

  private final String label;

  Lid(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
