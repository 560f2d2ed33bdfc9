package fairboil.analysis.trace;

import java.util.OptionalDouble;

/** Finds when a fire was lit, where nobody marked it. */
public final class Ignition {

  private static final double RISE_KELVINS = 60;
  private static final double LASTING_SECONDS = 10;
  private static final double BEFORE_SECONDS = 10;

  private Ignition() {}

  /**
   * The time from which the flame trace stayed 60 K above its lowest beginning for 10 s; empty if
   * it did not, or if the record does not show at least 10 s of the cold stove before.
   */
  public static OptionalDouble find(Trace flame) {
    Trace trace = flame.withoutMissing();
    double lowest = Double.POSITIVE_INFINITY;
    double since = Double.NaN;
    for (int i = 0; i < trace.size(); i++) {
      double value = trace.celsiusAt(i);
      double time = trace.secondsAt(i);
      if (value < lowest + RISE_KELVINS) {
        lowest = Math.min(lowest, value);
        since = Double.NaN;
      } else {
        since = Double.isNaN(since) ? time : since;
        if (time - since >= LASTING_SECONDS) {
          boolean coldBefore = since - trace.secondsAt(0) >= BEFORE_SECONDS;
          return coldBefore ? OptionalDouble.of(since) : OptionalDouble.empty();
        }
      }
    }
    return OptionalDouble.empty();
  }
}
