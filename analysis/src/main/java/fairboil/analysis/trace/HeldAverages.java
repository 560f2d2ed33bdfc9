package fairboil.analysis.trace;

/**
 * Centred averages of a trace over a hold, on an even grid of times: the integral of the trace,
 * joined by straight lines across at most five sampling intervals, over the hold. NaN where the
 * hold leaves the trace, spans a longer gap or has fewer than three readings.
 */
final class HeldAverages {

  private static final int LEAST_READINGS = 3;
  private static final int LONGEST_GRID = 2_000_000;

  final double from;
  final double step;
  final double hold;
  final double[] values;

  private HeldAverages(double from, double step, double hold, double[] values) {
    this.from = from;
    this.step = step;
    this.hold = hold;
    this.values = values;
  }

  /** Averages whose hold lies between two times, a tenth of the hold or a reading apart. */
  static HeldAverages of(Trace trace, double from, double to, double hold) {
    Trace present = trace.withoutMissing();
    if (present.size() < LEAST_READINGS || !(to - from >= hold)) {
      return new HeldAverages(from, hold, hold, new double[0]);
    }
    double first = Math.max(from, present.secondsAt(0)) + hold / 2;
    double last = Math.min(to, present.secondsAt(present.size() - 1)) - hold / 2;
    double step = Math.max(hold / 10, trace.interval());
    step = Math.max(step, (last - first) / LONGEST_GRID);
    int count = last < first ? 0 : (int) Math.floor((last - first) / step + 1e-9) + 1;
    return new HeldAverages(first, step, hold, fill(present, first, step, count, hold));
  }

  double timeAt(int index) {
    return from + index * step;
  }

  int size() {
    return values.length;
  }

  /** Where the highest average is, or -1 if there is none. */
  int indexOfHighest() {
    int best = -1;
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i]) && (best < 0 || values[i] > values[best])) {
        best = i;
      }
    }
    return best;
  }

  private static double[] fill(Trace trace, double first, double step, int count, double hold) {
    Integral integral = new Integral(trace);
    double[] averages = new double[count];
    for (int i = 0; i < count; i++) {
      double middle = first + i * step;
      averages[i] = integral.between(middle - hold / 2, middle + hold / 2) / hold;
    }
    return averages;
  }

  /** The running integral of a trace without missing readings; to be asked in order of time. */
  private static final class Integral {

    private final double[] times;
    private final double[] values;
    private final double[] sums;
    private final int[] stretchOf;
    private final double slack;
    private int low;
    private int high;

    Integral(Trace trace) {
      times = trace.times();
      values = trace.values();
      sums = new double[times.length];
      stretchOf = new int[times.length];
      slack = trace.interval() / 2;
      double longest = trace.longestBridge() * (1 + 1e-9);
      for (int i = 1; i < times.length; i++) {
        double gap = times[i] - times[i - 1];
        sums[i] = sums[i - 1] + gap * (values[i] + values[i - 1]) / 2;
        stretchOf[i] = stretchOf[i - 1] + (gap > longest ? 1 : 0);
      }
    }

    double between(double from, double to) {
      low = lastAtOrBefore(from, low);
      high = lastAtOrBefore(to, Math.max(high, low));
      int end = Math.min(high + (times[high] < to ? 1 : 0), times.length - 1);
      if (stretchOf[low] != stretchOf[end] || readings(from, to, end) < LEAST_READINGS) {
        return Double.NaN;
      }
      return upTo(to, high) - upTo(from, low);
    }

    private int readings(double from, double to, int end) {
      int first = times[low] >= from - slack ? low : low + 1;
      int last = times[end] <= to + slack ? end : end - 1;
      return last - first + 1;
    }

    private int lastAtOrBefore(double time, int start) {
      int i = start;
      while (i + 1 < times.length && times[i + 1] <= time) {
        i++;
      }
      return i;
    }

    private double upTo(double time, int i) {
      double beyond = time - times[i];
      if (beyond <= 0 || i + 1 >= times.length) {
        return sums[i];
      }
      double gap = times[i + 1] - times[i];
      double value = values[i] + (values[i + 1] - values[i]) * beyond / gap;
      return sums[i] + beyond * (values[i] + value) / 2;
    }
  }
}
