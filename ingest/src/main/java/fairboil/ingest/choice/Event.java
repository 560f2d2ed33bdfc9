package fairboil.ingest.choice;

/** The moments of a run that have a meaning here. */
public enum Event implements Choice {
  /** Fuel or tinder lit. */
  LIT("lit"),
  /** The wood gas above the fuel caught. */
  GAS_LIT("gas lit"),
  /** The pot set on the stove. */
  POT_ON("pot on"),
  /** A person saw the water boil. */
  BOIL("boil"),
  /** The pot taken off. */
  POT_OFF("pot off"),
  /** The flame went out; char glows on. */
  FLAME_OUT("flame out"),
  /** The last glow went out. */
  GLOW_OUT("glow out"),
  /** Fuel added. */
  REFUELLED("refuelled"),
  /** The lid put on. */
  LID_ON("lid on"),
  /** The lid taken off. */
  LID_OFF("lid off");

  private final String label;

  Event(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
