package fairboil.analysis.trace;

import fairboil.ingest.choice.Role;
import java.util.Arrays;

/** Thins a trace to what the eye sees on a chart. */
public final class Thinning {

  /** The most points of a curve. */
  public static final int MOST_POINTS = 450;

  private Thinning() {}

  /**
   * A curve of at most {@link #MOST_POINTS} points: the lowest and the highest reading of each
   * stretch of equal length, in the order of time, and a NaN where readings are so far apart that
   * no line should join them.
   */
  public static Curve thin(String name, Role role, Trace trace) {
    Trace present = trace.withoutMissing();
    Points points = new Points(present.size());
    fill(points, present, 0);
    for (int buckets = MOST_POINTS / 2; points.count > MOST_POINTS; buckets = buckets * 9 / 10) {
      points.clear();
      fill(points, present, Math.max(1e-9, span(present) / Math.max(1, buckets)));
    }
    return new Curve(name, role, points.seconds(), points.celsius());
  }

  private static double span(Trace trace) {
    return trace.secondsAt(trace.size() - 1) - trace.secondsAt(0);
  }

  /** Adds a stretch of the given width after the other; each reading by itself for width 0. */
  private static void fill(Points points, Trace trace, double width) {
    double longest = Math.max(trace.longestBridge(), width);
    int from = 0;
    while (from < trace.size()) {
      int to = endOfStretch(trace, from, width, longest);
      if (from > 0 && trace.secondsAt(from) - trace.secondsAt(from - 1) > longest) {
        points.add((trace.secondsAt(from) + trace.secondsAt(from - 1)) / 2, Double.NaN);
      }
      addExtremes(points, trace, from, to);
      from = to;
    }
  }

  private static int endOfStretch(Trace trace, int from, double width, double longest) {
    int to = from + 1;
    if (width <= 0) {
      return to;
    }
    double start = trace.secondsAt(0);
    double end = start + width * (1 + Math.floor((trace.secondsAt(from) - start) / width));
    while (to < trace.size()
        && trace.secondsAt(to) < end
        && trace.secondsAt(to) - trace.secondsAt(to - 1) <= longest) {
      to++;
    }
    return to;
  }

  private static void addExtremes(Points points, Trace trace, int from, int to) {
    int lowest = from;
    int highest = from;
    for (int i = from + 1; i < to; i++) {
      if (trace.celsiusAt(i) < trace.celsiusAt(lowest)) {
        lowest = i;
      }
      if (trace.celsiusAt(i) > trace.celsiusAt(highest)) {
        highest = i;
      }
    }
    int first = Math.min(lowest, highest);
    int second = Math.max(lowest, highest);
    points.add(trace.secondsAt(first), trace.celsiusAt(first));
    if (second > first) {
      points.add(trace.secondsAt(second), trace.celsiusAt(second));
    }
  }

  /** Points being collected: a reading and a gap before it each take one. */
  private static final class Points {

    private final double[] seconds;
    private final double[] celsius;
    private int count;

    Points(int readings) {
      seconds = new double[2 * readings + 1];
      celsius = new double[2 * readings + 1];
    }

    void add(double time, double value) {
      seconds[count] = time;
      celsius[count++] = value;
    }

    void clear() {
      count = 0;
    }

    double[] seconds() {
      return Arrays.copyOf(seconds, count);
    }

    double[] celsius() {
      return Arrays.copyOf(celsius, count);
    }
  }
}
