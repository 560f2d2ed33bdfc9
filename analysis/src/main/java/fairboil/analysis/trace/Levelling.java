package fairboil.analysis.trace;

import java.util.OptionalDouble;

/** Whether heated water stopped getting hotter. */
public final class Levelling {

  /** So long it must hold its level, s. */
  private static final double WINDOW_SECONDS = 180;

  private static final double AVERAGE_SECONDS = 60;

  /** Slower than this in K/s, a quarter of a kelvin a minute, water comes to no boil. */
  private static final double LEAST_RATE = 0.004;

  /** A probe that hangs beside the pot warms by less, K. */
  private static final double LEAST_RISE_KELVINS = 10;

  private static final int FEWEST_READINGS = 4;

  private Levelling() {}

  /**
   * The highest level of the water, °C, if it rose to it and then held it for three minutes; empty
   * if it was still rising when the record ends, or fell at once.
   *
   * @param trace the clean water trace while the pot was on
   */
  public static OptionalDouble find(Trace trace) {
    Trace present = trace.withoutMissing();
    if (present.size() < FEWEST_READINGS) {
      return OptionalDouble.empty();
    }
    double last = present.secondsAt(present.size() - 1);
    HeldAverages held =
        HeldAverages.of(
            present, present.secondsAt(0), last, Math.max(AVERAGE_SECONDS, 3 * present.interval()));
    int best = held.indexOfHighest();
    if (best < 0 || held.values[best] - present.lowest() < LEAST_RISE_KELVINS) {
      return OptionalDouble.empty();
    }
    double middle = Math.min(held.timeAt(best), last - WINDOW_SECONDS / 2);
    double later = Math.min(held.timeAt(best), last - WINDOW_SECONDS);
    return isFlat(present, middle - WINDOW_SECONDS / 2) || isFlat(present, later)
        ? OptionalDouble.of(held.values[best])
        : OptionalDouble.empty();
  }

  private static boolean isFlat(Trace trace, double from) {
    Trace part = trace.between(from, from + WINDOW_SECONDS);
    if (part.size() < FEWEST_READINGS || from < trace.secondsAt(0)) {
      return false;
    }
    Line line = Line.through(part, 0, part.size());
    return Math.abs(line.slope()) + 2 * line.uncertaintyOfSlope() <= LEAST_RATE;
  }
}
