package fairboil.analysis.trace;

import java.util.Optional;
import java.util.OptionalDouble;

/** Finds when a fire was lit: where the flame trace first leaves the cold. */
public final class Ignition {

  private static final double RISE_KELVINS = 60;
  private static final double LASTING_SECONDS = 10;
  private static final double BEFORE_SECONDS = 10;
  private static final double LEAST_DEPARTURE_KELVINS = 10;
  private static final double COLD_KELVINS = 15;
  private static final double WARM_KELVINS = 150;
  private static final double USUAL_AIR = 20;

  /** How soon a bead sees a fire that was lit, s, and the share of a slow rise: judgements. */
  private static final double BEAD_SECONDS = 3;

  private static final double SHARE_OF_RISE = 0.2;

  private final Trace trace;

  private Ignition(Trace trace) {
    this.trace = trace;
  }

  /**
   * The beginning of the first rise by 60 K above the lowest so far that lasts 10 s; empty if there
   * is none, or if the record does not show the stove before: for 10 s without warming and no more
   * than 150 K above the air, or by a first reading near the air temperature.
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
    Trace before = trace.between(trace.secondsAt(0), trace.secondsAt(risen - 1));
    Trace cold = before.within(before.lowest(), LEAST_DEPARTURE_KELVINS);
    double base = cold.median();
    double limit = base + Math.max(LEAST_DEPARTURE_KELVINS, 4 * Noise.betweenNeighbours(cold));
    int last = risen - 1;
    while (last > 0 && trace.celsiusAt(last) >= limit) {
      last--;
    }
    return isCold(last, base, ambient)
        ? Optional.of(sighting(last, risen, base))
        : Optional.empty();
  }

  private boolean isCold(int last, double base, OptionalDouble ambient) {
    double air = ambient.orElse(USUAL_AIR);
    boolean asAir = ambient.isPresent() && base <= air + COLD_KELVINS;
    double span = trace.secondsAt(last) - trace.secondsAt(0);
    double climb = Line.through(trace, 0, last + 1).slope() * span;
    boolean held = span >= BEFORE_SECONDS && climb <= LEAST_DEPARTURE_KELVINS / 2;
    return asAir || (held && base <= air + WARM_KELVINS);
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
