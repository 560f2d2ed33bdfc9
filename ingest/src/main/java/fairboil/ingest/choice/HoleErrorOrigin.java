package fairboil.ingest.choice;

/** How hole-position errors came about: what may be concluded from them. */
public enum HoleErrorOrigin implements Choice {
  /** As the drilling turned out: an association, not a cause. */
  AS_IT_CAME("as it came"),
  /** Drilled on purpose, given to builds in random order. */
  ASSIGNED("assigned");

  private final String label;

  HoleErrorOrigin(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
