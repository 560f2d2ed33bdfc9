package fairboil.analysis.model;

import java.util.Arrays;

/**
 * What one model fits beyond a smaller one: sums of squares in sequence, from which variance
 * components follow by equating them to their expectations (Henderson, Biometrics 9, 1953, method
 * 3; for groups of one factor the analysis of variance that ISO 5725-2 prescribes).
 *
 * @param smaller the smaller model
 * @param larger the larger one, which holds the smaller
 * @param squares the sum of squares
 * @param degreesOfFreedom its degrees of freedom, at least 0
 */
public record MeanSquare(
    FactorSpace smaller, FactorSpace larger, double squares, int degreesOfFreedom) {

  private static final double ROUNDING = 1e-12;

  /** What the larger model fits beyond the smaller. */
  public static MeanSquare beyond(FactorSpace smaller, FactorSpace larger, double[] values) {
    double[] centred = centred(values);
    double squares = larger.squares(centred) - smaller.squares(centred);
    return new MeanSquare(smaller, larger, Math.max(0, squares), larger.rank() - smaller.rank());
  }

  /** What a model leaves unfitted. */
  public static MeanSquare beyond(FactorSpace model, double[] values) {
    double[] centred = centred(values);
    double total = Arrays.stream(centred).map(value -> value * value).sum();
    double left = Math.max(0, total - model.squares(centred));
    // what is left of values that are all alike is rounding
    double squares = left > ROUNDING * total ? left : 0;
    return new MeanSquare(model, model, squares, values.length - model.rank());
  }

  /** Large means would drown small squares. Every model here has the mean in it. */
  private static double[] centred(double[] values) {
    double mean = Arrays.stream(values).average().orElse(0);
    return Arrays.stream(values).map(value -> value - mean).toArray();
  }

  /** Whether there is anything to tell. */
  public boolean isThere() {
    return degreesOfFreedom > 0;
  }

  /** Squares over degrees of freedom. */
  public double value() {
    return squares / degreesOfFreedom;
  }

  /** How often the variance of a random factor is in the expectation of the mean square. */
  public double weight(int[] factor) {
    return (larger.weight(factor) - smaller.weight(factor)) / degreesOfFreedom;
  }
}
