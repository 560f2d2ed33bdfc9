package fairboil.ingest.choice;

/** The units in which people read the results. */
public enum DisplayUnits implements Choice {
  /** °C, mm, kg. */
  METRIC("metric"),
  /** °F, inches, pounds. */
  US("US");

  private final String label;

  DisplayUnits(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
