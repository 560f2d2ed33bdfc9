package fairboil.demo;

/**
 * The air round a stove.
 *
 * @param celsius its temperature
 * @param pascal its pressure at the place
 */
record Air(double celsius, double pascal) {

  private static final double PASCAL_PER_MMHG = 133.322;
  private static final double RELATIVE_HUMIDITY = 0.6;

  /**
   * Pressure at a height: the isothermal barometric formula with a scale height of 8,434 m, that of
   * 15 °C ({@code R T / (M g)}).
   */
  static double pressureAt(double metres, double seaLevelPascal) {
    return seaLevelPascal * StrictMath.exp(-metres / 8434);
  }

  /**
   * Boiling point of water, °C, by the Antoine equation with the constants 8.07131, 1730.63 and
   * 233.426 (mmHg, °C): common in handbooks, within 0.1 K from 0.6 to 1.1 bar.
   */
  double boilingPoint() {
    return 1730.63 / (8.07131 - StrictMath.log10(pascal / PASCAL_PER_MMHG)) - 233.426;
  }

  /** Pressure of saturated steam in Pa, by the same equation. */
  static double steamPressure(double celsius) {
    return PASCAL_PER_MMHG * StrictMath.pow(10, 8.07131 - 1730.63 / (233.426 + celsius));
  }

  /** Pressure of the steam that the air holds, in Pa. */
  double humidity() {
    return RELATIVE_HUMIDITY * steamPressure(celsius);
  }
}
