package fairboil.ingest.choice;

/** What a claim says of its measure. */
public enum Relation implements Choice {
  /** The value or less. */
  AT_MOST("at most"),
  /** The value or more. */
  AT_LEAST("at least"),
  /** Within the stated margin of it. */
  NO_DIFFERENT_FROM("no different from");

  private final String label;

  Relation(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
