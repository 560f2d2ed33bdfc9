package fairboil.reports.chart;

import java.util.Arrays;
import java.util.List;

/** A sequence of places on a panel, in the units of its axes; y is NaN where a line breaks. */
public final class Points {

  private final double[] x;
  private final double[] y;

  private Points(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /**
   * The places of those pairs. A pair of which either is not finite becomes a break.
   *
   * @throws IllegalArgumentException if there are not as many of one as of the other
   */
  public static Points of(double[] x, double[] y) {
    if (x.length != y.length) {
      throw new IllegalArgumentException(x.length + " x and " + y.length + " y");
    }
    double[] along = x.clone();
    double[] up = y.clone();
    for (int i = 0; i < along.length; i++) {
      if (!Double.isFinite(along[i]) || !Double.isFinite(up[i])) {
        along[i] = i == 0 ? 0 : along[i - 1];
        up[i] = Double.NaN;
      }
    }
    return new Points(along, up);
  }

  /** Those places. */
  public static Points of(List<ChartPoint> spots) {
    return of(
        spots.stream().mapToDouble(ChartPoint::x).toArray(),
        spots.stream().mapToDouble(ChartPoint::y).toArray());
  }

  /** Those places. */
  public static Points of(ChartPoint... spots) {
    return of(List.of(spots));
  }

  /** How many there are, breaks among them. */
  public int size() {
    return x.length;
  }

  /** Whether there is nothing to draw: no place at all, or breaks only. */
  public boolean isBlank() {
    return Arrays.stream(y).allMatch(Double::isNaN);
  }

  /** A place. */
  public ChartPoint at(int index) {
    return new ChartPoint(x[index], y[index]);
  }

  /** The x of each; a copy. */
  public double[] x() {
    return x.clone();
  }

  /** The y of each; a copy. */
  public double[] y() {
    return y.clone();
  }
}
