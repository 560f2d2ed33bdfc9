package fairboil.analysis.model;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A straight line through points that are uncertain in both coordinates.
 *
 * <p>For quantities whose errors add, are independent and have a known size. It is not for the RMS
 * hole error: errors of reading make an RMS larger and never smaller, and a line like this one
 * would correct for the wrong thing.
 *
 * @param slope the slope
 * @param intercept the value at x = 0
 * @param slopeError standard error of the slope
 * @param interceptError standard error of the intercept
 * @param sumOfSquares the weighted sum of squares about the line: with uncertainties that are right
 *     about n − 2
 */
public record ErrorsInBoth(
    double slope, double intercept, double slopeError, double interceptError, double sumOfSquares) {

  private static final int MOST_STEPS = 500;

  private static final double CLOSE = 1e-14;

  /**
   * The line of York, Evensen, Martínez and De Basabe Delgado (American Journal of Physics 72,
   * 2004), errors in x and y independent of each other.
   *
   * @param x at least three
   * @param y as many
   * @param ux standard uncertainty of each x, above 0
   * @param uy standard uncertainty of each y, above 0
   * @return the line, or empty if the points do not determine one
   */
  public static Optional<ErrorsInBoth> york(double[] x, double[] y, double[] ux, double[] uy) {
    if (x.length < 3 || y.length != x.length || ux.length != x.length || uy.length != x.length) {
      return Optional.empty();
    }
    double ratio = meanSquare(uy) / meanSquare(ux);
    double slope = demingSlope(x, y, ratio);
    for (int step = 0; step < MOST_STEPS && Double.isFinite(slope); step++) {
      double next = Adjusted.of(x, y, ux, uy, slope).nextSlope();
      if (Math.abs(next - slope) <= CLOSE * Math.abs(next)) {
        return Optional.of(Adjusted.of(x, y, ux, uy, next).line());
      }
      slope = next;
    }
    return Optional.empty();
  }

  /**
   * Deming's line (Statistical Adjustment of Data, 1943), of which only the ratio of the error
   * variances is known; standard errors are scaled by the scatter about the line.
   *
   * @param ratio variance of the errors of y over that of the errors of x, above 0
   * @return the line, or empty if the points do not determine one
   */
  public static Optional<ErrorsInBoth> deming(double[] x, double[] y, double ratio) {
    double[] ux = new double[x.length];
    double[] uy = new double[x.length];
    Arrays.fill(ux, 1);
    Arrays.fill(uy, Math.sqrt(ratio));
    return york(x, y, ux, uy)
        .map(line -> line.scaled(Math.sqrt(line.sumOfSquares / (x.length - 2))));
  }

  private ErrorsInBoth scaled(double factor) {
    return new ErrorsInBoth(
        slope, intercept, factor * slopeError, factor * interceptError, sumOfSquares);
  }

  private static double meanSquare(double[] values) {
    return Arrays.stream(values).map(value -> value * value).average().orElseThrow();
  }

  private static double demingSlope(double[] x, double[] y, double ratio) {
    double meanX = Arrays.stream(x).average().orElseThrow();
    double meanY = Arrays.stream(y).average().orElseThrow();
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < x.length; i++) {
      xx += (x[i] - meanX) * (x[i] - meanX);
      xy += (x[i] - meanX) * (y[i] - meanY);
      yy += (y[i] - meanY) * (y[i] - meanY);
    }
    double half = yy - ratio * xx;
    return (half + Math.sqrt(half * half + 4 * ratio * xy * xy)) / (2 * xy);
  }

  /** The points moved onto a line of a given slope, as far as each is uncertain. */
  @SuppressWarnings("ArrayRecordComponent") // stays inside this class
  private record Adjusted(
      double[] x,
      double[] y,
      double slope,
      double[] weights,
      double[] moves,
      double meanX,
      double meanY) {

    static Adjusted of(double[] x, double[] y, double[] ux, double[] uy, double slope) {
      int n = x.length;
      double[] weights = new double[n];
      for (int i = 0; i < n; i++) {
        weights[i] = 1 / (uy[i] * uy[i] + slope * slope * ux[i] * ux[i]);
      }
      double meanX = mean(weights, x);
      double meanY = mean(weights, y);
      double[] moves = new double[n];
      for (int i = 0; i < n; i++) {
        double u = x[i] - meanX;
        double v = y[i] - meanY;
        moves[i] = weights[i] * (u * uy[i] * uy[i] + slope * v * ux[i] * ux[i]);
      }
      return new Adjusted(x, y, slope, weights, moves, meanX, meanY);
    }

    double nextSlope() {
      double up = 0;
      double along = 0;
      for (int i = 0; i < x.length; i++) {
        up += weights[i] * moves[i] * (y[i] - meanY);
        along += weights[i] * moves[i] * (x[i] - meanX);
      }
      return up / along;
    }

    ErrorsInBoth line() {
      double intercept = meanY - slope * meanX;
      double[] adjusted = Arrays.stream(moves).map(move -> meanX + move).toArray();
      double middle = mean(weights, adjusted);
      double squares = 0;
      double spread = 0;
      for (int i = 0; i < x.length; i++) {
        squares += weights[i] * Math.pow(y[i] - slope * x[i] - intercept, 2);
        spread += weights[i] * Math.pow(adjusted[i] - middle, 2);
      }
      double all = Arrays.stream(weights).sum();
      return new ErrorsInBoth(
          slope,
          intercept,
          Math.sqrt(1 / spread),
          Math.sqrt(1 / all + middle * middle / spread),
          squares);
    }

    private static double mean(double[] weights, double[] values) {
      double sum = IntStream.range(0, values.length).mapToDouble(i -> weights[i] * values[i]).sum();
      return sum / Arrays.stream(weights).sum();
    }
  }
}
