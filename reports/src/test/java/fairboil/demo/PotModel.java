package fairboil.demo;

/**
 * Heat balance of a pot: heat from the fire, less heat lost to the air, less heat that steam takes
 * from an open pot, warms water and pot; at the boiling point what is left over makes steam.
 */
final class PotModel {

  /** Specific heat of water, J/(kg K). */
  static final double WATER = 4186;

  /** Heat of evaporation at the boiling point, J/kg. */
  static final double STEAM = 2_260_000;

  private static final int STEPS_A_SECOND = 4;
  private static final double STEP = 1.0 / STEPS_A_SECOND;

  private final Burn burn;
  private final double boilingPoint;
  private double celsius;
  private double waterKg;
  private double boilAt = Double.NaN;
  private double leftAtPotOff;

  private PotModel(Burn burn) {
    this.burn = burn;
    this.boilingPoint = burn.air().boilingPoint();
    this.celsius = burn.pot().startCelsius();
    this.waterKg = burn.pot().waterKg();
    this.leftAtPotOff = waterKg;
  }

  /**
   * What becomes of the water.
   *
   * @param celsius its temperature, from the first reading
   * @param boilAt when it comes to the boil, s since lighting; NaN if it does not
   * @param waterLeftKg what is left when the pot comes off
   */
  record Water(Series celsius, double boilAt, double waterLeftKg) {}

  /** Works out a burn. */
  static Water of(Burn burn) {
    return new PotModel(burn).run();
  }

  private Water run() {
    Burn.Times times = burn.times();
    double[] trace = new double[times.readings()];
    for (int i = 0; i < trace.length; i++) {
      trace[i] = celsius;
      second(times.logFrom() + i);
      if (times.logFrom() + i + 1 == times.potOff()) {
        leftAtPotOff = waterKg;
      }
    }
    return new Water(Series.of(trace), boilAt, leftAtPotOff);
  }

  private void second(int second) {
    if (second < burn.times().potOn()) {
      return;
    }
    for (int step = 0; step < STEPS_A_SECOND; step++) {
      advance(second + step * STEP);
    }
  }

  private void advance(double at) {
    double steam = steamHeat(celsius);
    double net = net(at, celsius, steam);
    if (celsius >= boilingPoint && net >= 0) {
      waterKg -= (net + steam) * STEP / STEAM;
      return;
    }
    waterKg -= steam * STEP / STEAM;
    double half = celsius + net / capacity() * STEP / 2;
    double next = celsius + net(at + STEP / 2, half, steamHeat(half)) / capacity() * STEP;
    if (next >= boilingPoint && Double.isNaN(boilAt)) {
      boilAt = at + STEP * (boilingPoint - celsius) / (next - celsius);
    }
    celsius = Math.min(next, boilingPoint);
  }

  private double net(double at, double water, double steam) {
    double loss = at < burn.times().potOff() ? burn.pot().loss() : burn.pot().lossOnStand();
    return burn.powerAt(at) - loss * (water - burn.air().celsius()) - steam;
  }

  private double steamHeat(double water) {
    double open = burn.pot().evaporation();
    return open == 0 ? 0 : open * Math.max(0, Air.steamPressure(water) - burn.air().humidity());
  }

  private double capacity() {
    return waterKg * WATER + burn.pot().emptyKg() * burn.pot().specificHeat();
  }
}
