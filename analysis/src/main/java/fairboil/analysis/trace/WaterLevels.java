package fairboil.analysis.trace;

import java.util.Arrays;
import java.util.Optional;

/**
 * Finds when a pot went onto a fire and came off it, where the water shows it: where its trace
 * leaves the level at which it began, and where it leaves its highest level for good.
 */
public final class WaterLevels {

  private static final double BASE_SECONDS = 15;
  private static final double LEAST_BASE_SECONDS = 20;
  private static final int LEAST_READINGS = 5;
  private static final double LEAST_DEPARTURE_KELVINS = 1;
  private static final double LASTING_SECONDS = 15;
  private static final double STEP_KELVINS = 5;
  private static final double STEP_SECONDS = 10;
  private static final double LINE_KELVINS = 6;
  private static final double HIGH_SHARE = 0.95;

  /** How soon water in a pot shows that it was put on or taken off, s: a judgement. */
  private static final double POT_SECONDS = 8;

  /** How soon a probe shows that it was put into water or taken out, s: a judgement. */
  private static final double DIP_SECONDS = 4;

  private final Trace trace;
  private final double departure;

  private WaterLevels(Trace trace) {
    this.trace = trace;
    this.departure = Math.max(LEAST_DEPARTURE_KELVINS, 5 * Noise.betweenNeighbours(trace));
  }

  /**
   * When the water first left the level at which it began, having kept it for 20 s: when the pot
   * was set on, or the probe dipped in.
   *
   * @param water the clean water trace
   * @param lag time constant of its probe, s; 0 where it is not known
   */
  public static Optional<Sighting> potOn(Trace water, double lag) {
    Trace present = water.withoutMissing();
    return present.size() < LEAST_READINGS ? Optional.empty() : new WaterLevels(present).first(lag);
  }

  /**
   * When the water left its highest level for good, by at least 6 K: when the pot was taken off, or
   * the probe taken out.
   *
   * @param water the clean water trace
   */
  public static Optional<Sighting> potOff(Trace water) {
    Trace present = water.withoutMissing();
    return present.size() < LEAST_READINGS ? Optional.empty() : new WaterLevels(present).last();
  }

  private Optional<Sighting> first(double lag) {
    double begins = trace.secondsAt(0);
    Trace start = trace.between(begins, begins + BASE_SECONDS);
    double base = start.median();
    int gone = start.size() < LEAST_READINGS ? -1 : firstAway(base);
    if (gone < 1 || trace.secondsAt(gone - 1) - begins < LEAST_BASE_SECONDS) {
      return Optional.empty();
    }
    int end = firstBeyond(gone, base + LINE_KELVINS, 1);
    boolean rises = trace.celsiusAt(gone) > base;
    if (isStep(gone, base)) {
      return Optional.of(Knee.sighting(trace, gone - 1, middle(gone), DIP_SECONDS));
    }
    return rises && end - gone >= LEAST_READINGS
        ? Optional.of(onLine(gone - 1, gone, end, base, lag))
        : Optional.empty();
  }

  /** From where on the trace stays away from a level for a while, or -1. */
  private int firstAway(double base) {
    int since = -1;
    for (int i = 0; i < trace.size(); i++) {
      if (Math.abs(trace.celsiusAt(i) - base) < departure) {
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

  private boolean isStep(int gone, double base) {
    double until = trace.secondsAt(gone - 1) + STEP_SECONDS;
    for (int i = gone; i < trace.size() && trace.secondsAt(i) <= until; i++) {
      if (Math.abs(trace.celsiusAt(i) - base) > STEP_KELVINS) {
        return true;
      }
    }
    return false;
  }

  private double middle(int index) {
    return (trace.secondsAt(index - 1) + trace.secondsAt(index)) / 2;
  }

  /** The first reading at or beyond a temperature, going up (1) or down (-1); else the last. */
  private int firstBeyond(int from, double celsius, int way) {
    int i = from;
    while (i < trace.size() - 1 && way * (trace.celsiusAt(i) - celsius) < 0) {
      i++;
    }
    return i;
  }

  private Sighting onLine(int last, int from, int end, double level, double lag) {
    Line line = Line.through(trace, from, end + 1);
    double seconds = line.reaches(level);
    double fit = line.uncertaintyAt(seconds, 0) / Math.abs(line.slope());
    return Knee.sighting(trace, last, seconds - lag, Math.hypot(POT_SECONDS, fit));
  }

  private Optional<Sighting> last() {
    double[] sorted = trace.values().clone();
    Arrays.sort(sorted);
    double high = sorted[(int) (HIGH_SHARE * (sorted.length - 1))];
    int last = trace.size() - 1;
    while (last >= 0 && trace.celsiusAt(last) < high - departure) {
      last--;
    }
    int end = firstBeyond(Math.min(last + 1, trace.size() - 1), high - LINE_KELVINS, -1);
    boolean fell = last >= 0 && trace.celsiusAt(end) <= high - LINE_KELVINS;
    if (!fell) {
      return Optional.empty();
    }
    return end - last < LEAST_READINGS
        ? Optional.of(Knee.sighting(trace, last, middle(last + 1), DIP_SECONDS))
        : Optional.of(onLine(last, last + 1, end, high, 0));
  }
}
