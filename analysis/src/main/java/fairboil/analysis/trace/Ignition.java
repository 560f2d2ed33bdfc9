package fairboil.analysis.trace;

import java.util.Optional;
import java.util.OptionalDouble;

/** Finds when a fire was lit: where the flame trace first leaves the cold. */
public final class Ignition {

  private static final double RISE_KELVINS = 60;
  private static final double LASTING_SECONDS = 10;
  private static final double BEFORE_SECONDS = 10;
  private static final double BASE_SECONDS = 30;
  private static final double LEAST_DEPARTURE_KELVINS = 10;
  private static final double COLD_KELVINS = 15;

  /** How soon a bead sees a fire that was lit, s, and the share of a slow rise: judgements. */
  private static final double BEAD_SECONDS = 3;

  private static final double SHARE_OF_RISE = 0.2;

  private final Trace trace;

  private Ignition(Trace trace) {
    this.trace = trace;
  }

  /**
   * The beginning of the first rise by 60 K above the lowest so far that lasts 10 s; empty if there
   * is none, or if the record does not show the cold stove before: for 10 s, or by a first reading
   * near the air temperature.
   *
   * @param flame the clean flame trace
   * @param ambient air temperature, °C, if it is known
   */
  public static Optional<Sighting> find(Trace flame, OptionalDouble ambient) {
    return new Ignition(flame.withoutMissing()).find(ambient);
  }

  private Optional<Sighting> find(OptionalDouble ambient) {
    int risen = risen();
    if (risen < 1) {
      return Optional.empty();
    }
    double near = baseBefore(risen);
    double noise = Noise.betweenNeighbours(trace.within(near, LEAST_DEPARTURE_KELVINS));
    double limit = near + Math.max(LEAST_DEPARTURE_KELVINS, 4 * noise);
    int last = risen - 1;
    while (last > 0 && trace.celsiusAt(last) >= limit) {
      last--;
    }
    double base = baseBefore(last + 1);
    return isCold(last, base, ambient)
        ? Optional.of(sighting(last, risen, base))
        : Optional.empty();
  }

  private double secondsBefore(int index) {
    return Math.max(trace.secondsAt(0), trace.secondsAt(index) - BASE_SECONDS);
  }

  /** The lowest reading of the while before an index: what a rise starts from. */
  private double baseBefore(int end) {
    Trace before = trace.between(secondsBefore(end - 1), trace.secondsAt(end - 1));
    double lowest = before.lowest();
    return before.within(lowest, LEAST_DEPARTURE_KELVINS).median();
  }

  private boolean isCold(int last, double base, OptionalDouble ambient) {
    boolean seen = trace.secondsAt(last) - trace.secondsAt(0) >= BEFORE_SECONDS;
    boolean asAir = ambient.isPresent() && base <= ambient.getAsDouble() + COLD_KELVINS;
    return seen || asAir;
  }

  private Sighting sighting(int last, int risen, double base) {
    double seconds = Knee.seconds(trace, last, risen, base);
    double slow = SHARE_OF_RISE * (trace.secondsAt(risen) - seconds);
    return Knee.sighting(trace, last, seconds, Math.hypot(BEAD_SECONDS, slow));
  }

  /** The first reading of the rise, or -1. */
  private int risen() {
    double lowest = Double.POSITIVE_INFINITY;
    int since = -1;
    for (int i = 0; i < trace.size(); i++) {
      if (trace.celsiusAt(i) < lowest + RISE_KELVINS) {
        lowest = Math.min(lowest, trace.celsiusAt(i));
        since = -1;
      } else {
        since = since < 0 ? i : since;
        if (trace.secondsAt(i) - trace.secondsAt(since) >= LASTING_SECONDS) {
          return since;
        }
      }
    }
    return -1;
  }
}
