package fairboil.analysis.heat;

import fairboil.analysis.water.Water;

/**
 * What a fire has to heat: water, and a pot of some heat capacity, from one temperature to another.
 *
 * @param water mass of water, kg, above 0
 * @param pot heat capacity of the pot, J/K, at least 0
 * @param from °C, within the range of {@link Water}
 * @param to °C, above {@code from}, within the range of {@link Water}
 */
public record Load(double water, double pot, double from, double to) {

  /** Checks the ranges. */
  public Load {
    if (!(water > 0) || !(pot >= 0) || !(to > from)) {
      throw new IllegalArgumentException(
          "not a load: " + water + " kg, " + pot + " J/K, " + from + " °C to " + to + " °C");
    }
  }

  /** The heat that it takes, J. */
  public double heat() {
    return water * (Water.enthalpy(to) - Water.enthalpy(from)) + pot * (to - from);
  }

  /** Mean heat capacity of water and pot together, J/K. */
  public double heatCapacity() {
    return heat() / (to - from);
  }

  /** Heat for each further kilogram of water, J/kg. */
  public double heatPerKilogram() {
    return Water.enthalpy(to) - Water.enthalpy(from);
  }

  /** Heat for each further kelvin at the start or at the end, J/K. */
  public double heatPerKelvin(double celsius) {
    return water * Water.heatCapacity(celsius, celsius) + pot;
  }

  /**
   * Energy scaling: the time that another load takes from the same net power.
   *
   * @param seconds the time that this load took, s
   */
  public double timeFor(Load other, double seconds) {
    return seconds * other.heat() / heat();
  }
}
