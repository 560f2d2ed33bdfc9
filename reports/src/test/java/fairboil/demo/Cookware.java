package fairboil.demo;

/** The two pots of the demonstration. */
enum Cookware {
  /** Light and wide. */
  BILLY("billy", 0.214, 897, "aluminium", 150, 1.05),
  /** Heavy and narrower. */
  CAULDRON("little cauldron", 0.388, 490, "stainless steel", 140, 0.95);

  private static final double OPEN_EVAPORATION = 0.0013;

  private final String label;
  private final double kilograms;
  private final double specificHeat;
  private final String material;
  private final int width;
  private final double stillAirLoss;

  Cookware(
      String label,
      double kilograms,
      double specificHeat,
      String material,
      int width,
      double stillAirLoss) {
    this.label = label;
    this.kilograms = kilograms;
    this.specificHeat = specificHeat;
    this.material = material;
    this.width = width;
    this.stillAirLoss = stillAirLoss;
  }

  /** Its name in the sheets. */
  String label() {
    return label;
  }

  /** Its row of {@code pots.csv}. */
  Object[] row() {
    return new Object[] {label, Decimal.text(1000 * kilograms, 0), material, width};
  }

  /** Heat that it loses in a wind, W/K. */
  double loss(int beaufort) {
    return stillAirLoss * (1 + 0.2 * beaufort);
  }

  /** This pot with water in it. */
  Burn.Pot filled(double waterKg, double celsius, Cover cover, int beaufort, double fireRatio) {
    double onStand = loss(beaufort);
    return new Burn.Pot(
        waterKg,
        celsius,
        kilograms,
        specificHeat,
        onStand * fireRatio,
        onStand,
        cover == Cover.OFF ? OPEN_EVAPORATION : 0);
  }

  /** Whether the lid is on. */
  enum Cover {
    /** Lid on, loose. */
    ON("on"),
    /** No lid. */
    OFF("off");

    private final String label;

    Cover(String label) {
      this.label = label;
    }

    /** The word in the sheet. */
    String label() {
      return label;
    }
  }
}
