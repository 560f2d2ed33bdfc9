package fairboil.analysis.model;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.numbers.core.Sum;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The numerical core of {@link LinearFit}: Householder QR of the scaled columns, then refined with
 * residuals in extended precision (Björck, Numerical Methods for Least Squares Problems, 1996,
 * section 2.9.3), so that ill-conditioned polynomials keep their digits.
 */
final class LeastSquares {

  /**
   * A column of which less than this share is new beside the columns before it is taken to depend
   * on them.
   */
  private static final double RANK_TOLERANCE = 1e-11;

  private static final int REFINEMENTS = 4;

  private final double[][] x;
  private final double[] scales;
  private final RealMatrix r;
  private final DecompositionSolver solver;

  private LeastSquares(double[][] x, double[] scales, QRDecomposition qr) {
    this.x = x;
    this.scales = scales;
    this.r = qr.getR();
    this.solver = qr.getSolver();
  }

  /**
   * A solution of the least-squares problem.
   *
   * @param coefficients one a column
   * @param residuals one a row
   */
  @SuppressWarnings("ArrayRecordComponent") // stays inside this package
  record Solution(double[] coefficients, double[] residuals) {}

  /** Decomposes the rows, or is empty if the columns depend on each other. */
  static Optional<LeastSquares> of(double[][] rows) {
    double[] scales = scales(rows);
    if (Arrays.stream(scales).anyMatch(scale -> scale == 0)) {
      return Optional.empty();
    }
    double[][] scaled = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      scaled[i] = new double[scales.length];
      for (int j = 0; j < scales.length; j++) {
        scaled[i][j] = rows[i][j] / scales[j];
      }
    }
    QRDecomposition qr = new QRDecomposition(new Array2DRowRealMatrix(scaled, false), 0);
    LeastSquares problem = new LeastSquares(scaled, scales, qr);
    return problem.fullRank() ? Optional.of(problem) : Optional.empty();
  }

  /** The norm of each column, rounded to a power of two so that scaling costs no digits. */
  private static double[] scales(double[][] rows) {
    double[] scales = new double[rows[0].length];
    for (int j = 0; j < scales.length; j++) {
      double squares = 0;
      for (double[] row : rows) {
        squares += row[j] * row[j];
      }
      scales[j] = squares == 0 ? 0 : Math.scalb(1.0, Math.getExponent(Math.sqrt(squares)));
    }
    return scales;
  }

  private boolean fullRank() {
    for (int j = 0; j < scales.length; j++) {
      if (!(Math.abs(r.getEntry(j, j)) > RANK_TOLERANCE)) {
        return false;
      }
    }
    return true;
  }

  Solution solve(double[] y) {
    int n = x.length;
    double[] beta = new double[scales.length];
    double[] residuals = new double[n];
    double last = Double.POSITIVE_INFINITY;
    for (int pass = 0; pass <= REFINEMENTS; pass++) {
      double[] step = step(y, beta, residuals);
      double size = relativeSize(step, beta);
      if (pass > 1 && size >= last) {
        break;
      }
      last = size;
      for (int j = 0; j < beta.length; j++) {
        beta[j] += step[j];
      }
      for (int i = 0; i < n; i++) {
        residuals[i] = misfit(i, y, beta, 0);
      }
    }
    for (int j = 0; j < beta.length; j++) {
      beta[j] /= scales[j];
    }
    return new Solution(beta, residuals);
  }

  /** The step of the coefficients that the system augmented with the residuals asks for. */
  private double[] step(double[] y, double[] beta, double[] residuals) {
    double[] misfit = new double[x.length];
    for (int i = 0; i < misfit.length; i++) {
      misfit[i] = misfit(i, y, beta, residuals[i]);
    }
    double[] slack = new double[beta.length];
    for (int j = 0; j < slack.length; j++) {
      Sum sum = Sum.create();
      for (int i = 0; i < x.length; i++) {
        sum.addProduct(x[i][j], residuals[i]);
      }
      slack[j] = sum.getAsDouble();
    }
    double[] fromMisfit = solver.solve(new ArrayRealVector(misfit, false)).toArray();
    double[] fromSlack = inverseGramTimes(slack);
    double[] step = new double[beta.length];
    for (int j = 0; j < step.length; j++) {
      step[j] = fromMisfit[j] + fromSlack[j];
    }
    return step;
  }

  private double misfit(int i, double[] y, double[] beta, double residual) {
    Sum sum = Sum.of(y[i]).add(-residual);
    for (int j = 0; j < beta.length; j++) {
      sum.addProduct(-x[i][j], beta[j]);
    }
    return sum.getAsDouble();
  }

  private static double relativeSize(double[] step, double[] beta) {
    double size = 0;
    for (int j = 0; j < step.length; j++) {
      size = Math.max(size, Math.abs(step[j]) / Math.max(Math.abs(beta[j]), Double.MIN_NORMAL));
    }
    return size;
  }

  /** {@code (X'X)⁻¹ v} for the scaled columns. */
  private double[] inverseGramTimes(double[] v) {
    return backSubstitute(forwardSubstitute(v));
  }

  /** {@code R⁻ᵀ v} for the scaled columns. */
  private double[] forwardSubstitute(double[] v) {
    double[] z = new double[v.length];
    for (int j = 0; j < v.length; j++) {
      double sum = v[j];
      for (int k = 0; k < j; k++) {
        sum -= r.getEntry(k, j) * z[k];
      }
      z[j] = sum / r.getEntry(j, j);
    }
    return z;
  }

  private double[] backSubstitute(double[] v) {
    double[] z = new double[v.length];
    for (int j = v.length - 1; j >= 0; j--) {
      double sum = v[j];
      for (int k = j + 1; k < v.length; k++) {
        sum -= r.getEntry(j, k) * z[k];
      }
      z[j] = sum / r.getEntry(j, j);
    }
    return z;
  }

  /** {@code log |X'X|} for the columns as they were given. */
  double logDeterminantOfGram() {
    double sum = 0;
    for (int j = 0; j < scales.length; j++) {
      sum += 2 * Math.log(Math.abs(r.getEntry(j, j)) * scales[j]);
    }
    return sum;
  }

  /** {@code v' (X'X)⁻¹ w} for the columns as they were given. */
  double inverseGram(double[] v, double[] w) {
    double[] left = forwardSubstitute(unscaled(v));
    double[] right = forwardSubstitute(unscaled(w));
    double sum = 0;
    for (int j = 0; j < left.length; j++) {
      sum += left[j] * right[j];
    }
    return sum;
  }

  /** {@code (X'X)⁻¹ v} for the columns as they were given. */
  double[] inverseGramTimesGiven(double[] v) {
    return unscaled(inverseGramTimes(unscaled(v)));
  }

  private double[] unscaled(double[] v) {
    double[] scaled = new double[v.length];
    for (int j = 0; j < v.length; j++) {
      scaled[j] = v[j] / scales[j];
    }
    return scaled;
  }
}
