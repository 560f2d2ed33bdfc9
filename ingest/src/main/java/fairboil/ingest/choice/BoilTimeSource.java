package fairboil.ingest.choice;

/** Which of two observations of the boil the results stand on. */
public enum BoilTimeSource implements Choice {
  /** The plateau of the water log, else the stopwatch. */
  LOG("log"),
  /** The stopwatch, else the log. */
  STOPWATCH("stopwatch");

  private final String label;

  BoilTimeSource(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
