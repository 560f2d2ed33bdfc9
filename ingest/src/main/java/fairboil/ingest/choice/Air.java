package fairboil.ingest.choice;

/** What the air through a ring is for. */
public enum Air implements Choice {
  /** Air to the fuel bed from below. */
  PRIMARY("primary"),
  /** Air to the gas from above. */
  SECONDARY("secondary"),
  /** Air into the space between the walls. */
  INTAKE("intake");

  private final String label;

  Air(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
