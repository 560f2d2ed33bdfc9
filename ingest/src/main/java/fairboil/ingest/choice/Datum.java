package fairboil.ingest.choice;

/** The edge from which the height of a hole is measured. */
public enum Datum implements Choice {
  /** Down from the top rim. */
  TOP_RIM("top rim"),
  /** Up from the bottom rim. */
  BOTTOM_RIM("bottom rim");

  private final String label;

  Datum(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
