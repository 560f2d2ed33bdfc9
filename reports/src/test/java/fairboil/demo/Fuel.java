package fairboil.demo;

/**
 * Fuel as weighed, in g.
 *
 * @param loaded pellets put in
 * @param left pellets left unburnt
 * @param charLeft char left
 */
record Fuel(double loaded, double left, double charLeft) {

  /** Lower heating value of the dry pellets, J/g. */
  static final double DRY_PELLETS = 18_600;

  private static final double CHAR = 29_500;

  /** Heat that it takes to dry and warm a gram of water in the fuel, J/g. */
  private static final double DRYING = 2600;

  /**
   * The fuel that a burn must have used.
   *
   * @param usefulHeat heat that went into water and steam, J
   * @param efficiency what share of the fuel's heat that was, the char left not counted as used
   * @param moisture water in the fuel, percent of moist fuel
   * @param charShare char left, as a share of the fuel burnt
   */
  static Fuel burnt(double usefulHeat, double efficiency, double moisture, double charShare) {
    double wet = moisture / 100;
    double heatOfOneGram = (1 - wet) * DRY_PELLETS - wet * DRYING - charShare * CHAR;
    double burnt = Decimal.rounded(usefulHeat / efficiency / heatOfOneGram, 0);
    return new Fuel(burnt, 0, Decimal.rounded(burnt * charShare, 0));
  }
}
