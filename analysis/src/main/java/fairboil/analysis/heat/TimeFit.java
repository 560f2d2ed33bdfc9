package fairboil.analysis.heat;

import java.util.Optional;

/**
 * Least squares of a response on a level and one or two smooth courses, for readings whose scatter
 * remembers: residuals of a logger's blocks are alike from one to the next, and taking them as
 * independent would claim a precision that is not there. The covariance is inflated by {@code (1 +
 * r) / (1 − r)}, with {@code r} the lag-one correlation of the residuals, and there are as many
 * degrees of freedom as that leaves (G. Box, G. Jenkins, Time Series Analysis, 1976: the variance
 * of a mean of a first-order autoregressive series, which a smooth course shares).
 *
 * <p>Columns are made orthogonal one after the other (modified Gram–Schmidt); with centred smooth
 * columns that is well conditioned, and many times as fast as a general solver.
 */
final class TimeFit {

  private static final double MOST_MEMORY = 0.95;
  private static final double RANK_TOLERANCE = 1e-9;

  private final double[] slopes;
  private final double[][] inverse;
  private final double[] residuals;
  private final double scatter;
  private final double memory;

  private TimeFit(double[] slopes, double[][] inverse, double[] residuals) {
    this.slopes = slopes;
    this.inverse = inverse;
    this.residuals = residuals;
    int fitted = slopes.length + 1;
    double squares = 0;
    double products = 0;
    for (int i = 0; i < residuals.length; i++) {
      squares += residuals[i] * residuals[i];
      products += i == 0 ? 0 : residuals[i] * residuals[i - 1];
    }
    int left = residuals.length - fitted;
    this.scatter = Math.sqrt(squares / left);
    this.memory = squares == 0 ? 0 : memory(products / squares, residuals.length, fitted);
  }

  /** The correlation, what the fitted terms took from it given back. */
  private static double memory(double correlation, int count, int fitted) {
    double restored = (count * correlation + fitted) / (count - fitted);
    return Math.max(0, Math.min(MOST_MEMORY, restored));
  }

  /**
   * Fits a response.
   *
   * @param response one value a reading
   * @param columns the courses, as long as {@code response}
   * @return empty where there are too few readings or one course follows from the others
   */
  static Optional<TimeFit> of(double[] response, double[]... columns) {
    int count = response.length;
    int terms = columns.length;
    if (count < 2 * terms + 4) {
      return Optional.empty();
    }
    double[][] q = new double[terms][];
    double[][] r = new double[terms][terms];
    for (int j = 0; j < terms; j++) {
      q[j] = centred(columns[j]);
      double whole = norm(q[j]);
      for (int i = 0; i < j; i++) {
        r[i][j] = takeOut(q[i], q[j]);
      }
      r[j][j] = norm(q[j]);
      if (!(r[j][j] > RANK_TOLERANCE * whole)) {
        return Optional.empty();
      }
      scale(q[j], 1 / r[j][j]);
    }
    double[] residuals = centred(response);
    double[] along = new double[terms];
    for (int j = 0; j < terms; j++) {
      along[j] = takeOut(q[j], residuals);
    }
    double[][] inverse = inverse(r);
    double[] slopes = new double[terms];
    for (int i = 0; i < terms; i++) {
      for (int j = i; j < terms; j++) {
        slopes[i] += inverse[i][j] * along[j];
      }
    }
    return Optional.of(new TimeFit(slopes, inverse, residuals));
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double[] centred(double[] values) {
    double mean = mean(values);
    double[] centred = values.clone();
    for (int i = 0; i < centred.length; i++) {
      centred[i] -= mean;
    }
    return centred;
  }

  private static double norm(double[] values) {
    double squares = 0;
    for (double value : values) {
      squares += value * value;
    }
    return Math.sqrt(squares);
  }

  /** Takes out of a column its part along a unit column, and tells that part. */
  private static double takeOut(double[] unit, double[] column) {
    double part = 0;
    for (int i = 0; i < unit.length; i++) {
      part += unit[i] * column[i];
    }
    for (int i = 0; i < unit.length; i++) {
      column[i] -= part * unit[i];
    }
    return part;
  }

  private static void scale(double[] column, double factor) {
    for (int i = 0; i < column.length; i++) {
      column[i] *= factor;
    }
  }

  /** The inverse of a triangle. */
  private static double[][] inverse(double[][] r) {
    int size = r.length;
    double[][] inverse = new double[size][size];
    for (int j = 0; j < size; j++) {
      inverse[j][j] = 1 / r[j][j];
      for (int i = j - 1; i >= 0; i--) {
        double sum = 0;
        for (int k = i + 1; k <= j; k++) {
          sum += r[i][k] * inverse[k][j];
        }
        inverse[i][j] = -sum / r[i][i];
      }
    }
    return inverse;
  }

  /** The slope along a column. */
  double slope(int column) {
    return slopes[column];
  }

  /** The covariance of two slopes, the memory of the residuals allowed for. */
  double covariance(int one, int other) {
    double sum = 0;
    for (int k = Math.max(one, other); k < slopes.length; k++) {
      sum += inverse[one][k] * inverse[other][k];
    }
    return sum * scatter * scatter * (1 + memory) / (1 - memory);
  }

  /** How many independent residuals there seem to be, less what was fitted; at least 1. */
  double degreesOfFreedom() {
    double independent = residuals.length * (1 - memory) / (1 + memory);
    return Math.max(1, independent - slopes.length - 1);
  }

  /** Standard deviation of the residuals, in the unit of the response. */
  double scatter() {
    return scatter;
  }

  /** Response less fit; a copy. */
  double[] residuals() {
    return residuals.clone();
  }
}
