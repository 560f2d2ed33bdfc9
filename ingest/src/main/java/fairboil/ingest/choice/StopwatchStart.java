package fairboil.ingest.choice;

/** The event at which the stopwatch was started. */
public enum StopwatchStart implements Choice {
  /** At lighting. */
  LIT("lit"),
  /** When the pot went on. */
  POT_ON("pot on");

  private final String label;

  StopwatchStart(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
