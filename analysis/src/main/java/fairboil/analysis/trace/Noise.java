package fairboil.analysis.trace;

/** Scatter of the readings of a trace, from their differences. */
final class Noise {

  private Noise() {}

  /**
   * Variance of the part of the scatter that is independent from reading to reading, K²: the
   * variogram at one and at two readings apart, drawn back to none apart. By medians, so that steps
   * and spikes do not count.
   *
   * @param trace without missing readings
   */
  static double independentVariance(Trace trace) {
    double one = halfSquaredDifference(trace, 1);
    double two = halfSquaredDifference(trace, 2);
    return Math.max(0, Math.min(one, 2 * one - two));
  }

  /** Standard deviation of a reading about its neighbours, K. */
  static double betweenNeighbours(Trace trace) {
    return Math.sqrt(halfSquaredDifference(trace, 1));
  }

  private static double halfSquaredDifference(Trace trace, int apart) {
    double[] values = trace.values();
    double[] times = trace.times();
    double longest = trace.longestBridge();
    double[] differences = new double[Math.max(0, values.length - apart)];
    int count = 0;
    for (int i = apart; i < values.length; i++) {
      if (times[i] - times[i - apart] <= longest) {
        differences[count++] = values[i] - values[i - apart];
      }
    }
    double scale = Robust.scale(differences, count);
    return scale * scale / 2;
  }
}
