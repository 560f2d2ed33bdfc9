package fairboil.ingest.choice;

/** The part of the can that a ring of holes is in. */
public enum Surface implements Choice {
  /** Round the wall. */
  WALL("wall"),
  /** In the flat end. */
  BASE("base");

  private final String label;

  Surface(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
