package fairboil.demo;

/**
 * The probes and what they add to the truth.
 *
 * @param waterLag time constant of the water probe, s
 * @param waterError what the water probe reads too much, K
 * @param waterNoise standard deviation of the water readings, K
 * @param airNoise standard deviation of the air readings, K
 */
record Probes(double waterLag, double waterError, double waterNoise, double airNoise) {

  /**
   * What the probes read in a burn.
   *
   * @param truth what happens
   * @param chance noise and flicker
   */
  Readings read(Happened truth, Chance chance) {
    Series flame = truth.flame();
    int size = flame.size();
    Series flicker = FlameModel.flicker(truth.burn(), flame, chance);
    Series water = truth.water().celsius().lagged(waterLag).plus(waterError);
    Series waterNoiseNow = chance.noise(size, waterNoise, 0);
    Series air = drifting(truth.burn().air().celsius(), size);
    Series airNoiseNow = chance.noise(size, airNoise, 0);
    return new Readings(
        truth.burn().times().logFrom(),
        flame.plus(flicker),
        water.plus(waterNoiseNow),
        air.plus(airNoiseNow));
  }

  /** The air over an hour: the sun comes and goes, and the mean stays. */
  private Series drifting(double celsius, int size) {
    return Series.of(size, i -> celsius + 2 * airNoise * StrictMath.sin(i / 240.0));
  }
}
