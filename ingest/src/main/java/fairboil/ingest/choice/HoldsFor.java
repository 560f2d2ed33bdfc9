package fairboil.ingest.choice;

/** How many burns a claim is about. */
public enum HoldsFor implements Choice {
  /** The mean of burns. */
  ON_AVERAGE("on average"),
  /** 19 burns in 20. */
  MOST_RUNS("most runs");

  private final String label;

  HoldsFor(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
