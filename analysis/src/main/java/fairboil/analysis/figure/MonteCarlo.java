package fairboil.analysis.figure;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;

/**
 * Propagation of distributions by the Monte Carlo method of JCGM 101:2008: a result is worked out
 * over and over from inputs drawn from their distributions, and its own distribution is read off
 * the sorted outcomes. For results that do not follow their inputs in a straight line, or in which
 * a rectangular part dominates. Immutable.
 */
public final class MonteCarlo {

  private final double[] sorted;

  private MonteCarlo(double[] sorted) {
    this.sorted = sorted;
  }

  /**
   * Draws outcomes.
   *
   * @param draws how many, at least 100
   * @param random where the inputs are drawn from
   * @param model draws the inputs and works out one result, finite
   */
  public static MonteCarlo of(
      int draws, RandomGenerator random, ToDoubleFunction<RandomGenerator> model) {
    if (draws < 100) {
      throw new IllegalArgumentException("at least 100 draws are needed, not " + draws);
    }
    double[] outcomes = new double[draws];
    for (int i = 0; i < draws; i++) {
      outcomes[i] = model.applyAsDouble(random);
    }
    Arrays.sort(outcomes);
    return new MonteCarlo(outcomes);
  }

  /** The mean of the outcomes (JCGM 101:2008, 7.6). */
  public double mean() {
    return Arrays.stream(sorted).average().orElseThrow();
  }

  /** Their standard deviation: the standard uncertainty (JCGM 101:2008, 7.6). */
  public double standardUncertainty() {
    double mean = mean();
    double squares = 0;
    for (double outcome : sorted) {
      squares += (outcome - mean) * (outcome - mean);
    }
    return Math.sqrt(squares / (sorted.length - 1));
  }

  /**
   * The interval that leaves as many outcomes below as above it (JCGM 101:2008, 7.7).
   *
   * @param confidence between 0 and 1
   */
  public Interval interval(double confidence) {
    double tail = (1 - confidence) / 2;
    return new Interval(quantile(tail), quantile(1 - tail));
  }

  /**
   * The shortest interval with so many of the outcomes (JCGM 101:2008, 5.3.4 and 7.7).
   *
   * @param confidence between 0 and 1
   */
  public Interval shortestInterval(double confidence) {
    int held = Math.min(sorted.length - 1, (int) Math.round(confidence * sorted.length));
    int best = 0;
    for (int i = 1; i + held < sorted.length; i++) {
      if (sorted[i + held] - sorted[i] < sorted[best + held] - sorted[best]) {
        best = i;
      }
    }
    return new Interval(sorted[best], sorted[best + held]);
  }

  private double quantile(double share) {
    double place = share * (sorted.length - 1);
    int below = Math.min(sorted.length - 2, (int) place);
    return sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]);
  }
}
