package fairboil.demo;

/**
 * What truly happens in a burn. Times are whole seconds since lighting.
 *
 * @param air the air
 * @param pot the pot and its water
 * @param fire the fire
 * @param times when things happen
 */
record Burn(Air air, Pot pot, Fire fire, Times times) {

  /**
   * A pot of water.
   *
   * @param waterKg water put in
   * @param startCelsius its temperature
   * @param emptyKg mass of the empty pot
   * @param specificHeat of what the pot is made of, J/(kg K)
   * @param loss heat lost to the air, W/K
   * @param lossOnStand the same after the pot came off the fire, W/K
   * @param evaporation heat that steam takes from an open pot, W per Pa of difference in steam
   *     pressure; 0 under a lid
   */
  record Pot(
      double waterKg,
      double startCelsius,
      double emptyKg,
      double specificHeat,
      double loss,
      double lossOnStand,
      double evaporation) {}

  /**
   * A fire.
   *
   * @param power heat into the pot when it goes on, W
   * @param growth growth of the power a second, as a share of the first
   * @param flame highest temperature of the bead, °C
   * @param flicker standard deviation of the flame, K
   * @param flickerMemory how long a flicker lasts, s
   */
  record Fire(double power, double growth, double flame, double flicker, double flickerMemory) {}

  /**
   * When things happen.
   *
   * @param logFrom first reading, 0 or before lighting
   * @param gasLit the wood gas catches
   * @param potOn the pot goes on
   * @param flameOut the flame goes out
   * @param potOff the pot comes off
   * @param logTo last reading
   */
  record Times(int logFrom, int gasLit, int potOn, int flameOut, int potOff, int logTo) {

    /** How many readings there are, one a second. */
    int readings() {
      return logTo - logFrom + 1;
    }

    /** The same, with a fire that lasts until {@code newFlameOut}. */
    Times withEnd(int newFlameOut, int newPotOff, int newLogTo) {
      return new Times(logFrom, gasLit, potOn, newFlameOut, newPotOff, newLogTo);
    }
  }

  /** The same burn at other times. */
  Burn at(Times newTimes) {
    return new Burn(air, pot, fire, newTimes);
  }

  /** Heat that the fire gives to the pot, W. */
  double powerAt(double second) {
    if (second < times.potOn || second >= times.potOff) {
      return 0;
    }
    if (second >= times.flameOut) {
      return 0.08 * fire.power;
    }
    double grown = fire.power * (1 + fire.growth * (second - times.potOn));
    return grown * Math.min(1, 0.3 + 0.7 * (times.flameOut - second) / 60);
  }
}
