package fairboil.analysis.sensor;

import fairboil.analysis.figure.Interval;

/**
 * How far a bare bead reads below the gas about it, as it loses heat by radiation.
 *
 * <p>Heat balance of a small grey bead in large black surroundings, steady and without conduction
 * along its wires: {@code h (Tg − Tb) = ε σ (Tb⁴ − Tw⁴)}, temperatures in K (F. P. Incropera and
 * others, Fundamentals of Heat and Mass Transfer; Y. A. Çengel, Heat and Mass Transfer). It is
 * never added to a reading: emissivity, heat transfer and walls of a small flame are known too
 * badly.
 *
 * @param emissivity range of the emissivity of the bead, within 0 to 1
 * @param heatTransfer range of the heat transfer coefficient, W/(m² K), above 0
 * @param walls range of the temperature of the surroundings, °C
 */
public record BeadRadiation(Interval emissivity, Interval heatTransfer, Interval walls) {

  /** A bead of 1 to 2 mm in a small wood-gas flame between hot tin and open air: judgements. */
  public static final BeadRadiation SMALL_FLAME =
      new BeadRadiation(new Interval(0.2, 0.9), new Interval(60, 200), new Interval(100, 500));

  private static final double STEFAN_BOLTZMANN = 5.670374e-8;
  private static final double ZERO_CELSIUS = 273.15;

  /** Checks the ranges. */
  public BeadRadiation {
    boolean possible = emissivity.low() >= 0 && emissivity.high() <= 1 && heatTransfer.low() > 0;
    if (!possible || walls.low() < -ZERO_CELSIUS) {
      throw new IllegalArgumentException(
          "not a bead: " + emissivity + ", " + heatTransfer + ", " + walls);
    }
  }

  /**
   * How far the gas is above a bead, K; below 0 where the walls are hotter than the bead.
   *
   * @param bead what the bead reads, °C
   * @param wall temperature of the surroundings, °C
   * @param emissivity of the bead, 0 to 1
   * @param heatTransfer heat transfer coefficient, W/(m² K), above 0
   */
  public static double gasAboveBead(
      double bead, double wall, double emissivity, double heatTransfer) {
    double radiated = fourth(bead + ZERO_CELSIUS) - fourth(wall + ZERO_CELSIUS);
    return emissivity * STEFAN_BOLTZMANN * radiated / heatTransfer;
  }

  private static double fourth(double kelvin) {
    return kelvin * kelvin * kelvin * kelvin;
  }

  /**
   * From the least to the most that a bead may read low, K, walls no hotter than the bead.
   *
   * @param bead what the bead reads, °C
   */
  public Interval readsLow(double bead) {
    double hottest = Math.min(bead, walls.high());
    double coldest = Math.min(bead, walls.low());
    return new Interval(
        gasAboveBead(bead, hottest, emissivity.low(), heatTransfer.high()),
        gasAboveBead(bead, coldest, emissivity.high(), heatTransfer.low()));
  }
}
