package fairboil.ingest.choice;

/** Whether the flame probe kept its place between runs. */
public enum FlameProbe implements Choice {
  /** Not touched since the run before. */
  STAYED("stayed"),
  /** Taken out or shifted since the run before. */
  MOVED("moved");

  private final String label;

  FlameProbe(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
