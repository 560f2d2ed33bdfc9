package fairboil.demo;

/**
 * The temperature of a bead in the flame: smoke first, then flame that slowly rises to its highest
 * and falls a little, then the glow of the char. The bead follows with a lag of a few seconds.
 */
final class FlameModel {

  private static final double LAG = 20;
  private static final double DROOP = 0.07;

  private FlameModel() {}

  /** The bead without flicker, °C, from the first reading. */
  static Series steady(Burn burn) {
    Burn.Times times = burn.times();
    return Series.of(times.readings(), i -> target(burn, times.logFrom() + i)).lagged(LAG);
  }

  /** The flicker to be added, K: none before the flame is there and after it is out. */
  static Series flicker(Burn burn, Series steady, Chance chance) {
    Burn.Fire fire = burn.fire();
    Series flicker = chance.noise(steady.size(), fire.flicker(), fire.flickerMemory());
    double air = burn.air().celsius();
    return Series.of(
        steady.size(),
        i -> {
          double alight = (steady.at(i) - air) / (fire.flame() - air);
          return flicker.at(i) * alight * alight;
        });
  }

  /**
   * The highest mean of the bead without flicker over so many seconds while the pot is on and the
   * flame alight, °C: what a peak is meant to be.
   */
  static double heldPeak(Burn burn, Series steady, int seconds) {
    Burn.Times times = burn.times();
    double highest = Double.NEGATIVE_INFINITY;
    int last = Math.min(times.flameOut(), times.logTo()) - seconds;
    for (int from = times.potOn(); from <= last; from++) {
      highest = Math.max(highest, steady.mean(from - times.logFrom(), seconds));
    }
    return highest;
  }

  private static double target(Burn burn, int second) {
    Burn.Times times = burn.times();
    double air = burn.air().celsius();
    double flame = burn.fire().flame() - air;
    if (second <= 0) {
      return air;
    }
    if (second < times.gasLit()) {
      return air + 0.3 * flame;
    }
    if (second < times.flameOut()) {
      return air + flame * (1 - droop(times, second));
    }
    return air + 0.25 * flame * StrictMath.exp((times.flameOut() - second) / 400.0);
  }

  private static double droop(Burn.Times times, int second) {
    double best = times.potOn() + 0.55 * (times.flameOut() - times.potOn());
    double away = (second - best) / (times.flameOut() - times.potOn());
    return DROOP * away * away / 0.3;
  }
}
