package fairboil.ingest.choice;

/** When what was left of the fuel was weighed or smothered. */
public enum WeighedAt implements Choice {
  /** When the water boiled. */
  BOIL("boil"),
  /** When the pot came off. */
  POT_OFF("pot off"),
  /** When flame and glow were out. */
  BURNT_OUT("burnt out");

  private final String label;

  WeighedAt(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
