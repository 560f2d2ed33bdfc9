package fairboil.analysis.trace;

/**
 * A wide smooth of evenly spaced values: at each point a parabola fitted by least squares to the
 * points within reach (A. Savitzky, M. J. E. Golay, Anal. Chem. 36 (1964) 1627, with gaps allowed).
 */
final class Smoothing {

  private static final int LEAST_POINTS = 6;

  private Smoothing() {}

  /** The smooth at each point; the value itself where too few points are within reach. */
  static double[] parabolas(double[] values, int reach) {
    double[] weights = weights(reach);
    double[] smooth = new double[values.length];
    int unbroken = 0; // values in a row without a gap, up to the far end of reach
    for (int last = 0; last < values.length + reach; last++) {
      unbroken = last < values.length && !Double.isNaN(values[last]) ? unbroken + 1 : 0;
      int middle = last - reach;
      if (middle >= 0) {
        smooth[middle] =
            unbroken > 2 * reach
                ? weighted(values, last, weights)
                : parabola(values, middle, reach);
      }
    }
    return smooth;
  }

  /** What a parabola makes of each value where none is missing, from the middle outwards. */
  private static double[] weights(int reach) {
    double[] weights = new double[reach + 1];
    double n = 2.0 * reach + 1;
    double x2 = 0;
    double x4 = 0;
    for (int i = 1; i <= reach; i++) {
      double square = (double) i * i;
      x2 += 2 * square;
      x4 += 2 * square * square;
    }
    for (int i = 0; i <= reach; i++) {
      weights[i] = (x4 - x2 * i * i) / (n * x4 - x2 * x2);
    }
    return weights;
  }

  private static double weighted(double[] values, int last, double[] weights) {
    int middle = last - weights.length + 1;
    double sum = weights[0] * values[middle];
    for (int i = 1; i < weights.length; i++) {
      sum += weights[i] * (values[middle - i] + values[middle + i]);
    }
    return sum;
  }

  private static double parabola(double[] values, int middle, int reach) {
    double n = 0;
    double x1 = 0;
    double x2 = 0;
    double x3 = 0;
    double x4 = 0;
    double y0 = 0;
    double y1 = 0;
    double y2 = 0;
    int from = Math.max(0, middle - reach);
    int end = Math.min(values.length, middle + reach + 1);
    for (int i = from; i < end; i++) {
      double y = values[i];
      if (!Double.isNaN(y)) {
        double x = (i - middle) / (double) reach;
        double square = x * x;
        n++;
        x1 += x;
        x2 += square;
        x3 += square * x;
        x4 += square * square;
        y0 += y;
        y1 += x * y;
        y2 += square * y;
      }
    }
    return n < LEAST_POINTS ? values[middle] : constantTerm(n, x1, x2, x3, x4, y0, y1, y2);
  }

  /** Cramer's rule for the value of the parabola at 0. */
  private static double constantTerm(
      double n, double x1, double x2, double x3, double x4, double y0, double y1, double y2) {
    double minorA = x2 * x4 - x3 * x3;
    double minorB = x1 * x4 - x2 * x3;
    double minorC = x1 * x3 - x2 * x2;
    double determinant = n * minorA - x1 * minorB + x2 * minorC;
    if (Math.abs(determinant) < 1e-9 * n) {
      return y0 / n;
    }
    return (y0 * minorA - y1 * minorB + y2 * minorC) / determinant;
  }
}
