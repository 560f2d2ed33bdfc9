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
    int buckets = MOST_POINTS / 2;
    do {
      points.clear();
      fill(points, present, buckets);
      buckets = buckets * 9 / 10;
    } while (points.count > MOST_POINTS && buckets > 0);
    return new Curve(name, role, points.seconds(), points.celsius());
  }

  private static void fill(Points points, Trace trace, int buckets) {
    int size = trace.size();
    if (size == 0) {
      return;
    }
    double start = trace.secondsAt(0);
    double width = (trace.secondsAt(size - 1) - start) / buckets;
    double longest = Math.max(trace.longestBridge(), size > MOST_POINTS ? width : 0);
    int from = 0;
    while (from < size) {
      double end = endOfBucket(trace.secondsAt(from) - start, width) + start;
      int to = from + 1;
      while (to < size
          && size > MOST_POINTS
          && trace.secondsAt(to) < end
          && trace.secondsAt(to) - trace.secondsAt(to - 1) <= longest) {
        to++;
      }
      if (from > 0 && trace.secondsAt(from) - trace.secondsAt(from - 1) > longest) {
        points.add((trace.secondsAt(from) + trace.secondsAt(from - 1)) / 2, Double.NaN);
      }
      addExtremes(points, trace, from, to);
      from = to;
    }
  }

  private static double endOfBucket(double sinceStart, double width) {
    return width > 0 ? width * (1 + Math.floor(sinceStart / width)) : Double.POSITIVE_INFINITY;
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
