package fairboil.ingest.choice;

/** What a column of a log holds. */
public enum Role implements Choice {
  /** The time of the reading. */
  TIME("time"),
  /** The temperature of a bead in the flame. */
  FLAME("flame"),
  /** The temperature of the water. */
  WATER("water"),
  /** The temperature of the air. */
  AMBIENT("ambient"),
  /** The temperature where thermocouple wires meet the logger. */
  COLD_JUNCTION("cold junction"),
  /** Something else: kept out of the results. */
  OTHER("other");

  private final String label;

  Role(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
