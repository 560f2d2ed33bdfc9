package fairboil.ingest.choice;

/** How a run ended; all of them are results. */
public enum Outcome implements Choice {
  /** The water boiled. */
  BOILED("boiled"),
  /** The fire burnt out with the water below its boiling point. */
  DID_NOT_BOIL("did not boil"),
  /** The fuel never caught. */
  WOULD_NOT_LIGHT("would not light"),
  /** The flame died before its fuel was used. */
  WENT_OUT("went out"),
  /** The tester ended it. */
  STOPPED("stopped");

  private final String label;

  Outcome(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
