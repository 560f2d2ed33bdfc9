package fairboil.ingest.choice;

/** The state of the stove when it was lit. */
public enum StoveStart implements Choice {
  /** At air temperature. */
  COLD("cold"),
  /** Still warm from another run. */
  WARM("warm");

  private final String label;

  StoveStart(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
