package fairboil.analysis.trace;

import java.util.Arrays;
import java.util.Optional;

/** Finds when a flame fell for good. */
public final class FlameOut {

  private static final double SHARE = 0.6;
  private static final double SHARE_STILL_UP = 0.85;
  private static final double HOT_SHARE = 0.98;
  private static final double LEAST_RISE_KELVINS = 100;
  private static final double LASTING_SECONDS = 60;
  private static final double LEVEL_FROM_SECONDS = 120;
  private static final double LEVEL_TO_SECONDS = 20;

  /** How well a person and a bead agree on a flame's end, s, and the share of a slow fall. */
  private static final double BEAD_SECONDS = 5;

  private static final double SHARE_OF_FALL = 1.0 / 3;

  private FlameOut() {}

  /**
   * The beginning of the fall of the flame trace below 60 % of its usual rise above the air, where
   * it stayed for the rest of the record, of at least 60 s; empty if it did not.
   *
   * @param trace the clean flame trace
   * @param from when the fire was lit or the pot put on, s
   * @param ambient air temperature, °C
   */
  public static Optional<Sighting> find(Trace trace, double from, double ambient) {
    Trace burn = trace.between(from, Double.POSITIVE_INFINITY).withoutMissing();
    int size = burn.size();
    double usual = usual(burn, ambient);
    if (!(usual - ambient >= LEAST_RISE_KELVINS)) {
      return Optional.empty();
    }
    int last = lastAbove(burn, size - 1, ambient + SHARE * (usual - ambient));
    boolean lasts =
        last >= 0
            && last + 1 < size
            && burn.secondsAt(size - 1) - burn.secondsAt(last) >= LASTING_SECONDS;
    return lasts ? Optional.of(sighting(burn, last + 1, ambient)) : Optional.empty();
  }

  private static int lastAbove(Trace burn, int from, double limit) {
    int last = from;
    while (last >= 0 && burn.celsiusAt(last) < limit) {
      last--;
    }
    return last;
  }

  private static Sighting sighting(Trace burn, int fallen, double ambient) {
    double at = burn.secondsAt(fallen);
    double settled = burn.between(at - LEVEL_FROM_SECONDS, at - LEVEL_TO_SECONDS).median();
    double level = Double.isNaN(settled) ? burn.celsiusAt(fallen - 1) : settled;
    double stillUp = ambient + SHARE_STILL_UP * (level - ambient);
    int last = Math.max(0, lastAbove(burn, fallen - 1, stillUp));
    double seconds = Knee.seconds(burn, last, fallen, level);
    double slow = SHARE_OF_FALL * (at - seconds);
    return Knee.sighting(burn, last, seconds, Math.hypot(BEAD_SECONDS, slow));
  }

  /**
   * The value that a quarter of the readings with the flame up are above; NaN where none rose above
   * the air. Up is above half the rise of the hottest: a long glow after a short burn does not
   * count.
   */
  private static double usual(Trace burn, double ambient) {
    double[] sorted = burn.values().clone();
    Arrays.sort(sorted);
    double hottest =
        sorted.length == 0 ? Double.NaN : sorted[(int) (HOT_SHARE * (sorted.length - 1))];
    if (!(hottest > ambient)) {
      return Double.NaN;
    }
    int up = Arrays.binarySearch(sorted, ambient + (hottest - ambient) / 2);
    int first = up < 0 ? -up - 1 : up;
    return sorted[first + (sorted.length - 1 - first) * 3 / 4];
  }
}
