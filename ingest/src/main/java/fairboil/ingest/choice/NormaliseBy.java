package fairboil.ingest.choice;

/** How boil times are restated for reference conditions. */
public enum NormaliseBy implements Choice {
  /** Heat balance where every run allows it, else energy scaling. */
  AUTO("auto"),
  /** Same net power, reference water, start and boiling point. */
  ENERGY_SCALING("energy scaling"),
  /** Same fire, heat lost to the air at the reference temperature. */
  HEAT_BALANCE("heat balance");

  private final String label;

  NormaliseBy(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
