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
    double[] smooth = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      smooth[i] = parabola(values, i, reach);
    }
    return smooth;
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
