package fairboil.analysis.model;

import java.util.function.DoubleFunction;

/**
 * Simulation and extrapolation: what an estimate would be without errors of measurement, found by
 * adding more and more of them and going back along the curve (Cook and Stefanski, Journal of the
 * American Statistical Association 89, 1994; the variance by Stefanski and Cook, the same 90,
 * 1995). The curve is a quadratic.
 *
 * @param estimate the estimate at no error of measurement
 * @param standardError its standard error
 */
public record Simex(double estimate, double standardError) {

  /** Variances of the errors that are added, in those that there are already. */
  private static final double[] ADDED = {0, 0.5, 1, 1.5, 2};

  /** Where the variance of all errors of measurement is 0. */
  private static final double NONE = -1;

  /**
   * An estimate with its variance.
   *
   * @param estimate the estimate
   * @param variance its variance, at least 0
   */
  public record Fit(double estimate, double variance) {}

  /**
   * Extrapolates.
   *
   * @param remeasured gives the fit of data to which errors have been added anew, of a variance so
   *     many times that of the errors there are; 0 adds none
   * @param draws how often errors are added for each variance, at least 2
   */
  public static Simex of(DoubleFunction<Fit> remeasured, int draws) {
    double[] estimates = new double[ADDED.length];
    double[] variances = new double[ADDED.length];
    Fit first = remeasured.apply(0);
    estimates[0] = first.estimate;
    variances[0] = first.variance;
    for (int i = 1; i < ADDED.length; i++) {
      double sum = 0;
      double squares = 0;
      double variance = 0;
      for (int draw = 0; draw < draws; draw++) {
        Fit fit = remeasured.apply(ADDED[i]);
        double beyond = fit.estimate - first.estimate;
        sum += beyond;
        squares += beyond * beyond;
        variance += fit.variance;
      }
      double scatter = (squares - sum * sum / draws) / (draws - 1);
      estimates[i] = first.estimate + sum / draws;
      variances[i] = variance / draws - scatter;
    }
    double extrapolated = extrapolated(variances);
    return new Simex(
        extrapolated(estimates), Math.sqrt(extrapolated > 0 ? extrapolated : first.variance));
  }

  private static double extrapolated(double[] values) {
    double[] squares = new double[ADDED.length];
    for (int i = 0; i < squares.length; i++) {
      squares[i] = ADDED[i] * ADDED[i];
    }
    // the columns are independent, and there are more rows than columns
    return LinearFit.of(Regressors.line("added", ADDED).and("squared", squares), values)
        .orElseThrow()
        .fitted(1, NONE, NONE * NONE);
  }
}
