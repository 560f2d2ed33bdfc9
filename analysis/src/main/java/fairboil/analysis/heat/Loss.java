package fairboil.analysis.heat;

/**
 * How a pot loses heat: so much for each kelvin by which it is warmer than the air, and so much for
 * each pascal by which its steam is above that of the air.
 *
 * @param perKelvin UA, W/K, at least 0
 * @param perPascal k, W/Pa, at least 0; 0 under a lid
 */
public record Loss(double perKelvin, double perPascal) {

  /** Checks the ranges. */
  public Loss {
    if (!(perKelvin >= 0) || !(perPascal >= 0)) {
      throw new IllegalArgumentException("not a loss: " + perKelvin + " W/K, " + perPascal);
    }
  }

  /** The heat lost at a temperature of the water, W. */
  public double watts(double celsius, Surroundings air) {
    double steam = perPascal == 0 ? 0 : perPascal * air.steamAbove(celsius);
    return perKelvin * (celsius - air.ambient()) + steam;
  }

  /** The same pot where it loses {@code ratio} times as much by the kelvin. */
  public Loss times(double ratio) {
    return new Loss(ratio * perKelvin, perPascal);
  }
}
