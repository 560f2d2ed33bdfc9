package fairboil.ingest.choice;

/** The part of a run in which the peak is sought. */
public enum PeakWindow implements Choice {
  /** From the pot going on to the flame going out. */
  POT_ON_TO_FLAME_OUT("pot on to flame out"),
  /** From lighting to the end of the record. */
  WHOLE_RUN("whole run");

  private final String label;

  PeakWindow(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
