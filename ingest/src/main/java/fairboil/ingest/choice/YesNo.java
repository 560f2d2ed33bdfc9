package fairboil.ingest.choice;

/** Yes or no. */
public enum YesNo implements Choice {
  /** Yes. */
  YES("yes"),
  /** No. */
  NO("no");

  private final String label;

  YesNo(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
