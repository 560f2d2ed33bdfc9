package fairboil.analysis.trace;

/**
 * Where a trace leaves a level: the line through the readings on its way meets the level. A
 * first-order lag does not shift where the answer to a step begins, as it would a fixed threshold.
 */
final class Knee {

  private static final double ROOT_12 = Math.sqrt(12);

  private Knee() {}

  /**
   * When the trace left the level.
   *
   * @param trace without missing readings
   * @param last index of the last reading at the level
   * @param end index of the last reading on the way, after {@code last}
   * @param level °C
   */
  static double seconds(Trace trace, int last, int end, double level) {
    double left = trace.secondsAt(last);
    double next = trace.secondsAt(last + 1);
    if (end - last < 2) {
      return (left + next) / 2;
    }
    Line line = Line.through(trace, last + 1, end + 1);
    double earliest = Math.max(trace.secondsAt(0), 2 * left - trace.secondsAt(end));
    return line.slope() == 0
        ? (left + next) / 2
        : Math.max(earliest, Math.min(next, line.reaches(level)));
  }

  /** A sighting at a knee: what the eye of a bead leaves open, and the time between readings. */
  static Sighting sighting(Trace trace, int last, double seconds, double judged) {
    double between = trace.secondsAt(last + 1) - trace.secondsAt(last);
    return new Sighting(seconds, Math.hypot(judged, between / ROOT_12));
  }
}
