package fairboil.analysis.heat;

import fairboil.analysis.water.Water;

/**
 * What stands on the stove: water and a pot, equally warm.
 *
 * @param water mass of the water, kg, above 0
 * @param pot heat capacity of the pot, J/K, at least 0
 */
public record Contents(double water, double pot) {

  /** Checks the ranges. */
  public Contents {
    if (!(water > 0) || !(pot >= 0)) {
      throw new IllegalArgumentException("not a pot of water: " + water + " kg, " + pot + " J/K");
    }
  }

  /** The heat capacity of both in the middle of the range, J/K. */
  public double capacity() {
    return water * (Table.at(95) - Table.at(20)) / 75 + pot;
  }

  /**
   * The heat gained since the first block, J, as water leaves by steam.
   *
   * @param enthalpies of the water at each block, J/kg
   * @param steam heat that left as steam since the first block, J
   */
  double[] heat(BlockMeans part, double[] enthalpies, double[] steam) {
    double latent = Water.latentHeat(Math.max(0, Math.min(Water.MAX_CELSIUS, part.mean())));
    double[] heat = new double[part.size()];
    for (int i = 1; i < heat.length; i++) {
      double mass = water - (steam[i] + steam[i - 1]) / 2 / latent;
      heat[i] =
          heat[i - 1]
              + mass * (enthalpies[i] - enthalpies[i - 1])
              + pot * (part.celsiusAt(i) - part.celsiusAt(i - 1));
    }
    return heat;
  }

  /** The enthalpy of water at each block, J/kg. */
  static double[] enthalpies(BlockMeans part) {
    double[] enthalpies = part.celsius();
    for (int i = 0; i < enthalpies.length; i++) {
      enthalpies[i] = Table.at(enthalpies[i]);
    }
    return enthalpies;
  }

  /** Enthalpy by straight lines over one kelvin each: within 1 J/kg, and many times as fast. */
  private static final class Table {

    private static final double[] WHOLE_DEGREES = wholeDegrees();

    private static double[] wholeDegrees() {
      double[] table = new double[(int) Water.MAX_CELSIUS + 1];
      for (int celsius = 0; celsius < table.length; celsius++) {
        table[celsius] = Water.enthalpy(celsius);
      }
      return table;
    }

    static double at(double celsius) {
      double within = Math.max(Water.MIN_CELSIUS, Math.min(Water.MAX_CELSIUS, celsius));
      int below = Math.min(WHOLE_DEGREES.length - 2, (int) within);
      double share = within - below;
      return WHOLE_DEGREES[below] * (1 - share) + WHOLE_DEGREES[below + 1] * share;
    }
  }
}
