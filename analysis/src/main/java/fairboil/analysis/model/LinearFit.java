package fairboil.analysis.model;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.numbers.core.Sum;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * A linear regression by (weighted) least squares. Immutable.
 *
 * <p>With weights {@code w} the model is {@code y = Xb + e}, {@code var(e) = s²/w}: the standard
 * errors are scaled by the residual mean square, as in R's {@code lm}. Formulas: Weisberg, Applied
 * Linear Regression (4th ed., 2014), chapters 2, 7 and 9.
 */
public final class LinearFit {

  private final Regressors x;
  private final double[] y;
  private final double[] weights;
  private final LeastSquares core;
  private final double[] coefficients;
  private final double[] residuals;
  private final double residualSumOfSquares;

  private LinearFit(Regressors x, double[] y, double[] weights, LeastSquares core) {
    this.x = x;
    this.y = y.clone();
    this.weights = weights.clone();
    this.core = core;
    double[] target = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      target[i] = Math.sqrt(weights[i]) * y[i];
    }
    LeastSquares.Solution solution = core.solve(target);
    this.coefficients = solution.coefficients();
    this.residuals = solution.residuals();
    this.residualSumOfSquares = Sum.ofProducts(residuals, residuals).getAsDouble();
  }

  /** An unweighted fit; otherwise as {@link #of(Regressors, double[], double[])}. */
  public static Optional<LinearFit> of(Regressors x, double[] y) {
    double[] ones = new double[y.length];
    Arrays.fill(ones, 1);
    return of(x, y, ones);
  }

  /**
   * Fits a model.
   *
   * @param x the regressors, at least one
   * @param y one finite response a row; copied
   * @param weights one finite weight above 0 a row; copied
   * @return the fit, or empty if there are no more rows than columns, or if the columns depend on
   *     each other to working precision: then no answer is better than a wrong one
   */
  public static Optional<LinearFit> of(Regressors x, double[] y, double[] weights) {
    if (y.length != x.rows() || weights.length != x.rows()) {
      throw new IllegalArgumentException(
          x.rows() + " rows, " + y.length + " responses, " + weights.length + " weights");
    }
    if (x.size() == 0 || x.rows() <= x.size()) {
      return Optional.empty();
    }
    return LeastSquares.of(x.weighted(weights)).map(core -> new LinearFit(x, y, weights, core));
  }

  /** The regressors. */
  public Regressors regressors() {
    return x;
  }

  /** The weights; a copy. */
  public double[] weights() {
    return weights.clone();
  }

  /** How many rows there are. */
  public int rows() {
    return y.length;
  }

  /** Rows less columns. */
  public int degreesOfFreedom() {
    return x.rows() - x.size();
  }

  /** The coefficient of the column of that name. */
  public double estimate(String name) {
    return coefficients[x.indexOf(name)];
  }

  /** The standard error of the coefficient of the column of that name. */
  public double standardError(String name) {
    return residualSd() * Math.sqrt(unscaledVariance(name));
  }

  /** The interval of the coefficient by Student's t. */
  public Interval interval(String name, double confidence) {
    return Interval.around(estimate(name), factor(confidence) * standardError(name));
  }

  /** The two-sided p-value of the coefficient against 0; NaN if it is without error. */
  public double pValue(String name) {
    return pValue(estimate(name), standardError(name), degreesOfFreedom());
  }

  /**
   * The two-sided p-value of an estimate against 0 by Student's t.
   *
   * @return between 0 and 1, or NaN if the standard error is 0: without scatter nothing is settled
   */
  public static double pValue(double estimate, double standardError, double degreesOfFreedom) {
    double t = Math.abs(estimate) / standardError;
    return standardError == 0 || Double.isNaN(t)
        ? Double.NaN
        : 2 * TDistribution.of(degreesOfFreedom).survivalProbability(t);
  }

  /** The sum of squares of the weighted residuals. */
  public double residualSumOfSquares() {
    return residualSumOfSquares;
  }

  /** The residual standard deviation of an observation of weight 1. */
  public double residualSd() {
    return Math.sqrt(residualSumOfSquares / degreesOfFreedom());
  }

  /** The share of the sum of squares explained: about the mean if there is an intercept, else 0. */
  public double rSquared() {
    double middle = x.hasIntercept() ? weightedMean() : 0;
    double total = 0;
    for (int i = 0; i < y.length; i++) {
      total += weights[i] * (y[i] - middle) * (y[i] - middle);
    }
    return 1 - residualSumOfSquares / total;
  }

  private double weightedMean() {
    return Sum.ofProducts(weights, y).getAsDouble() / Sum.of(weights).getAsDouble();
  }

  /** {@code log |X'WX|}. */
  double logDeterminantOfGram() {
    return core.logDeterminantOfGram();
  }

  /** The variance of a coefficient where the residual variance is 1. */
  double unscaledVariance(String name) {
    double[] unit = unit(name);
    return core.inverseGram(unit, unit);
  }

  /**
   * How many times the variance of a coefficient is what it would be if the other columns had
   * nothing in common with its own (Marquardt, Technometrics 12, 1970): at least 1; for a model
   * with an intercept.
   */
  public double varianceInflation(String name) {
    int column = x.indexOf(name);
    double total = Sum.of(weights).getAsDouble();
    double mean = Sum.ofProducts(weights, x.column(column)).getAsDouble() / total;
    double squares = 0;
    for (int i = 0; i < y.length; i++) {
      squares += weights[i] * Math.pow(x.column(column)[i] - mean, 2);
    }
    return unscaledVariance(name) * squares;
  }

  /** How far a coefficient moves for each unit by which the response of a row does. */
  public double pull(String name, int row) {
    return weights[row] * core.inverseGram(unit(name), x.row(row));
  }

  /** Observed less fitted, in the unit of the response. */
  public double residual(int row) {
    return residuals[row] / Math.sqrt(weights[row]);
  }

  /** The leverage of a row: how much of its fitted value is its own doing, from 0 to 1. */
  public double leverage(int row) {
    double[] at = x.row(row);
    return Math.min(1, weights[row] * core.inverseGram(at, at));
  }

  /**
   * Cook's distance of a row (Cook, Technometrics 19, 1977): how far all fitted values move if it
   * is left out; infinite for a row of leverage 1, which alone decides a coefficient; 0 where the
   * fit is exact.
   */
  public double cook(int row) {
    double leverage = leverage(row);
    if (aloneInItsDirection(leverage)) {
      return Double.POSITIVE_INFINITY;
    }
    if (residuals[row] == 0) {
      return 0;
    }
    double standardised = residuals[row] / residualSd();
    double rest = 1 - leverage;
    return standardised * standardised * leverage / (x.size() * rest * rest);
  }

  /**
   * The heteroscedasticity-consistent standard error HC3 (MacKinnon and White, Journal of
   * Econometrics 29, 1985) of a coefficient; NaN if a row has leverage 1.
   */
  public double robustStandardError(String name) {
    double[] direction = core.inverseGramTimesGiven(unit(name));
    double variance = 0;
    for (int i = 0; i < y.length; i++) {
      double leverage = leverage(i);
      if (aloneInItsDirection(leverage)) {
        return Double.NaN;
      }
      double part =
          Math.sqrt(weights[i]) * dot(direction, x.row(i)) * residuals[i] / (1 - leverage);
      variance += part * part;
    }
    return Math.sqrt(variance);
  }

  private static boolean aloneInItsDirection(double leverage) {
    return leverage > 1 - 1e-10;
  }

  /** The fitted value where the regressors have the given values. */
  public double fitted(double... at) {
    return dot(coefficients, at);
  }

  /** The standard error of {@link #fitted}. */
  public double standardErrorAt(double... at) {
    return residualSd() * Math.sqrt(core.inverseGram(at, at));
  }

  /** The interval of the fitted mean where the regressors have the given values. */
  public Interval band(double confidence, double... at) {
    return Interval.around(fitted(at), factor(confidence) * standardErrorAt(at));
  }

  /** The interval of one new observation of weight 1 there. */
  public Interval prediction(double confidence, double... at) {
    return Interval.around(
        fitted(at), factor(confidence) * Math.hypot(standardErrorAt(at), residualSd()));
  }

  private double factor(double confidence) {
    return Measured.coverageFactor(confidence, degreesOfFreedom());
  }

  private double[] unit(String name) {
    double[] unit = new double[x.size()];
    unit[x.indexOf(name)] = 1;
    return unit;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }
}
