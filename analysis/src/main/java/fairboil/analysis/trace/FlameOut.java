package fairboil.analysis.trace;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Finds when a flame fell for good, where nobody marked it. */
public final class FlameOut {

  private static final double SHARE = 0.6;
  private static final double LEAST_RISE_KELVINS = 100;
  private static final double LASTING_SECONDS = 60;

  private FlameOut() {}

  /**
   * The time at which the flame trace fell below 60 % of its usual rise above the air and stayed
   * there for the rest of the record, of at least 60 s; empty if it did not.
   *
   * @param trace the clean flame trace
   * @param from when the fire was lit or the pot put on, s
   * @param ambient air temperature, °C
   */
  public static OptionalDouble find(Trace trace, double from, double ambient) {
    Trace burn = trace.between(from, Double.POSITIVE_INFINITY).withoutMissing();
    int size = burn.size();
    double usual = upperQuartile(burn);
    if (size == 0 || usual - ambient < LEAST_RISE_KELVINS) {
      return OptionalDouble.empty();
    }
    double limit = ambient + SHARE * (usual - ambient);
    int lastAbove = size - 1;
    while (lastAbove >= 0 && burn.celsiusAt(lastAbove) < limit) {
      lastAbove--;
    }
    boolean lasts =
        lastAbove >= 0
            && lastAbove + 1 < size
            && burn.secondsAt(size - 1) - burn.secondsAt(lastAbove) >= LASTING_SECONDS;
    return lasts ? OptionalDouble.of(burn.secondsAt(lastAbove + 1)) : OptionalDouble.empty();
  }

  /** The value that a quarter of the readings are above; NaN for none. */
  private static double upperQuartile(Trace trace) {
    double[] sorted = trace.values().clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? Double.NaN : sorted[sorted.length * 3 / 4];
  }
}
