package fairboil.ingest.choice;

/** The shape of the fuel. */
public enum FuelForm implements Choice {
  /** Pressed pellets. */
  PELLETS("pellets"),
  /** Sticks or splits. */
  STICKS("sticks"),
  /** Wood chips. */
  CHIPS("chips"),
  /** Tree cones. */
  CONES("cones");

  private final String label;

  FuelForm(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
