package fairboil.analysis.heat;

import fairboil.analysis.water.Saturation;

/**
 * The air about a pot.
 *
 * @param ambient its temperature, °C
 * @param steam pressure of the steam that it holds, Pa, at least 0
 */
public record Surroundings(double ambient, double steam) {

  /** Share of what it could hold that air is taken to hold where nobody measured it. */
  public static final double USUAL_HUMIDITY = 0.5;

  /** Checks the ranges. */
  public Surroundings {
    if (!Double.isFinite(ambient) || !(steam >= 0)) {
      throw new IllegalArgumentException("not air: " + ambient + " °C, " + steam + " Pa of steam");
    }
  }

  /** Air of the usual humidity. Over ice, where next to no steam is held, as at 0 °C. */
  public static Surroundings at(double ambient) {
    double within = Math.max(Saturation.MIN_CELSIUS, Math.min(60, ambient));
    return new Surroundings(ambient, USUAL_HUMIDITY * Saturation.pressure(within));
  }

  /** How far the steam over water of a temperature is above that of the air, Pa; at least 0. */
  double steamAbove(double celsius) {
    double within = Math.max(Saturation.MIN_CELSIUS, Math.min(Saturation.MAX_CELSIUS, celsius));
    return Math.max(0, Saturation.pressure(within) - steam);
  }
}
