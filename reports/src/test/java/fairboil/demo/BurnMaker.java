package fairboil.demo;

/** Draws what truly happens in one burn of the demonstration. */
final class BurnMaker {

  /** True change of the flame with the error of the upper ring, K/mm. */
  static final double FLAME_PER_MM = -14;

  /** True change of the power with the error of the upper ring, share/mm. */
  static final double POWER_PER_MM = -0.02;

  /** By how much the bead follows the air: less than 1. */
  static final double FOLLOWS_AIR = 0.4;

  private static final double FLAME = 672;
  private static final double FLAME_SD_STOVES = 8;
  private static final double FLAME_SD_RUNS = 9;
  private static final double MARROW_FLAME = 2;
  private static final double POWER = 590;
  private static final double POWER_SD_STOVES = 0.025;
  private static final double POWER_SD_RUNS = 0.03;
  private static final double MARROW_POWER = 1.02;
  private static final double MIDDLE_RMS = 2;
  private static final double[] WATERS = {0.55, 0.6, 0.8, 0.8, 1.0, 1.18};

  private final Chance stoveChance;
  private final Chance chance;
  private final Stove stove;
  private final Day day;
  private final int slot;
  private final Cookware cookware;
  private final Cookware.Cover cover;
  private final LogDialect dialect;

  BurnMaker(
      long seed,
      Stove stove,
      Day day,
      int slot,
      Cookware cookware,
      Cookware.Cover cover,
      LogDialect dialect) {
    this.stoveChance = Chance.of(seed, "stove " + stove.name());
    this.chance = Chance.of(seed, "burn " + stove.name() + " " + day.season());
    this.stove = stove;
    this.day = day;
    this.slot = slot;
    this.cookware = cookware;
    this.cover = cover;
    this.dialect = dialect;
  }

  /** What becomes of the pot after the fire. */
  enum After {
    /** It stands and cools, still logged. */
    COOL,
    /** The logger is stopped. */
    PACK_UP
  }

  /** Draws the burn. */
  Burn burn(DemoRun.Fate fate, After after) {
    Air air = new Air(day.air(slot) + chance.gauss(0.4), day.pressure());
    Burn open = new Burn(air, pot(), fire(air), lighting());
    return open.at(times(open, fate, after));
  }

  private Burn.Pot pot() {
    double water = WATERS[chance.whole(0, WATERS.length - 1)] + chance.between(-0.008, 0.008);
    double start = day.tap() + chance.between(-0.5, 1.5);
    double fireRatio = 1 + chance.gauss(0.08);
    return cookware.filled(Decimal.rounded(water, 3), start, cover, day.wind(), fireRatio);
  }

  private Burn.Fire fire(Air air) {
    double error = stove.upperRms() - MIDDLE_RMS;
    boolean marrow = stove.design() == Design.MARROW;
    double flame =
        FLAME
            + FLAME_PER_MM * error
            + (marrow ? MARROW_FLAME : 0)
            + stoveChance.gauss(FLAME_SD_STOVES)
            + chance.gauss(FLAME_SD_RUNS)
            + FOLLOWS_AIR * (air.celsius() - 20);
    double power =
        POWER
            * (1 + POWER_PER_MM * error)
            * (marrow ? MARROW_POWER : 1)
            * (1 + stoveChance.gauss(POWER_SD_STOVES))
            * (1 + chance.gauss(POWER_SD_RUNS))
            * (1 - 0.02 * day.wind());
    return new Burn.Fire(
        power, chance.between(1e-4, 3e-4), flame, chance.between(14, 24), chance.between(2, 4));
  }

  /** Lighting, and a fire without end. */
  private Burn.Times lighting() {
    int logFrom = dialect.tellsTimeOfDay() ? -chance.whole(20, 60) : 0;
    int gasLit = chance.whole(22, 45);
    int potOn = gasLit + chance.whole(30, 60);
    return new Burn.Times(logFrom, gasLit, potOn, 9000, 9000, 3000);
  }

  private Burn.Times times(Burn open, DemoRun.Fate fate, After after) {
    int boil = (int) PotModel.of(open).boilAt();
    int flameOut = boil + chance.whole(360, 600);
    int potOff = flameOut + chance.whole(15, 45);
    int packed = Math.max(1500, potOff + 120) + chance.whole(0, 90);
    int cold = potOff + 1560 + chance.whole(0, 90);
    Burn.Times times = open.times();
    return switch (fate) {
      case WENT_OUT -> times.withEnd(252, 420, 1560);
      case KNOCKED_OVER -> times.withEnd(flameOut, 236, packed);
      case BOILED, NO_LOG -> times.withEnd(flameOut, potOff, after == After.COOL ? cold : packed);
    };
  }

  /** What was weighed of the fuel after a burn. */
  Fuel fuel(DemoRun.Fate fate, Happened happened) {
    double efficiency = 0.27 + chance.gauss(0.012);
    double charShare = 0.18 + chance.gauss(0.01);
    return switch (fate) {
      case WENT_OUT -> new Fuel(214, 141, 9);
      case KNOCKED_OVER -> new Fuel(226, 0, 0);
      case BOILED, NO_LOG ->
          Fuel.burnt(happened.usefulHeat(), efficiency, day.moisture(), charShare);
    };
  }
}
