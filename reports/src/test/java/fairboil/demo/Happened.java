package fairboil.demo;

/**
 * A burn worked out: the truth that no logger sees.
 *
 * @param burn the burn
 * @param flame the bead without flicker, °C
 * @param water what became of the water
 */
record Happened(Burn burn, Series flame, PotModel.Water water) {

  /** Works out a burn. */
  static Happened in(Burn burn) {
    return new Happened(burn, FlameModel.steady(burn), PotModel.of(burn));
  }

  /** From the pot going on to the boil, s; NaN if the water does not boil. */
  double boilTime() {
    return water.boilAt() - burn.times().potOn();
  }

  /** The highest mean of the steady flame over 10 s, °C. */
  double heldPeak() {
    return FlameModel.heldPeak(burn, flame, 10);
  }

  /** Heat that went into the water and into steam until the pot came off, J. */
  double usefulHeat() {
    Burn.Pot pot = burn.pot();
    double warmed =
        pot.waterKg() * PotModel.WATER * (water.celsius().highest() - pot.startCelsius());
    return warmed + PotModel.STEAM * (pot.waterKg() - water.waterLeftKg());
  }
}
