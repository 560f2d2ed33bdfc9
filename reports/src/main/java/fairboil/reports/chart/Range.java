package fairboil.reports.chart;

import java.util.stream.DoubleStream;

/** The range of values that an axis must show. Values that are not finite are passed over. */
final class Range {

  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  static Range of(DoubleStream values) {
    Range range = new Range();
    values.forEach(range::add);
    return range;
  }

  void add(double value) {
    if (Double.isFinite(value)) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }

  /** Adds a value, but lets it stretch the range to either side by at most a share of it. */
  static Range stretched(Range core, DoubleStream values, double share) {
    double reach = share * core.width();
    Range range = of(DoubleStream.of(core.low, core.high));
    values.forEach(
        value -> range.add(Math.max(core.low - reach, Math.min(core.high + reach, value))));
    return range;
  }

  boolean isEmpty() {
    return low > high;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  double width() {
    return isEmpty() ? 0 : high - low;
  }

  /** An axis over the range with a margin of that share of it at either end. */
  Axis axis(String title, Axis.Ticks ticks, double margin) {
    return axis(title, ticks, margin, margin);
  }

  /** An axis over the range with margins of those shares of it below and above. */
  Axis axis(String title, Axis.Ticks ticks, double below, double above) {
    if (isEmpty()) {
      return new Axis(title, 0, 1, ticks);
    }
    double size = width() > 0 ? width() : Math.max(1, Math.abs(low) * 0.05);
    return new Axis(title, low - below * size, high + above * size, ticks);
  }

  /** The same, starting at 0 where the values lie above it and not far from it. */
  Axis axisFromZero(String title, Axis.Ticks ticks, double margin) {
    Axis axis = axis(title, ticks, margin);
    boolean near = !isEmpty() && low >= 0 && high > 0 && low < 0.75 * high;
    // A little below 0, so that the figure at 0 is not cut off.
    return near ? new Axis(title, -0.005 * high, high * (1 + margin), ticks) : axis;
  }
}
