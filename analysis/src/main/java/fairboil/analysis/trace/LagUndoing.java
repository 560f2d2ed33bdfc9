package fairboil.analysis.trace;

/**
 * Undoes the lag of a probe of first order, whose readings T follow what is about it by {@code
 * dT/dt = (T₀ − T)/τ}: T₀ = T + τ dT/dt (R. P. Benedict, Fundamentals of Temperature, Pressure, and
 * Flow Measurements, the equation of first order; cited from memory).
 *
 * <p>The slope is that of a line through the readings within half a time constant, at least two
 * readings, on either side: a step comes back as a ramp of about one time constant. What scatter
 * this adds is seen in the corrected trace itself.
 */
public final class LagUndoing {

  private static final double REACH_IN_TIME_CONSTANTS = 0.5;
  private static final double LEAST_REACH_IN_READINGS = 2;
  private static final int LEAST_READINGS = 3;

  private LagUndoing() {}

  /**
   * The trace without the lag.
   *
   * @param trace the trace as read
   * @param timeConstant time to follow a step to 63 %, s, at least 0
   */
  public static Trace undo(Trace trace, double timeConstant) {
    if (!(timeConstant >= 0)) {
      throw new IllegalArgumentException("not a time constant: " + timeConstant);
    }
    Trace present = trace.withoutMissing();
    double reach =
        Math.max(
            REACH_IN_TIME_CONSTANTS * timeConstant,
            (LEAST_REACH_IN_READINGS + 1e-6) * present.interval());
    double[] undone = new double[present.size()];
    for (int i = 0; i < undone.length; i++) {
      undone[i] = present.celsiusAt(i) + timeConstant * slope(present, i, reach);
    }
    return Trace.of(present.times(), undone, present.interval());
  }

  /** Slope about a reading, K/s, not over a gap; 0 where there are too few readings about it. */
  private static double slope(Trace trace, int middle, double reach) {
    int from = edge(trace, middle, -1, reach);
    int end = edge(trace, middle, 1, reach) + 1;
    return end - from < LEAST_READINGS ? 0 : Line.through(trace, from, end).slope();
  }

  private static int edge(Trace trace, int middle, int way, double reach) {
    int edge = middle;
    for (int i = middle + way; i >= 0 && i < trace.size(); i += way) {
      double step = Math.abs(trace.secondsAt(i) - trace.secondsAt(edge));
      double away = Math.abs(trace.secondsAt(i) - trace.secondsAt(middle));
      if (step > trace.longestBridge() || away > reach) {
        break;
      }
      edge = i;
    }
    return edge;
  }
}
