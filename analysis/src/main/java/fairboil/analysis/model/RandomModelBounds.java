package fairboil.analysis.model;

import fairboil.analysis.figure.Deviations;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Bounds for the quantiles of single values in a one-way random model, groups of any sizes: by
 * generalised pivotal quantities (Krishnamoorthy and Mathew, Technometrics 46, 2004; unbalanced by
 * unweighted means). Immutable once made.
 */
public final class RandomModelBounds {

  private static final int DRAWS = 20_000;

  private final double mean;
  private final double total;
  private final double[] means;
  private final double[] deviations;

  private RandomModelBounds(double mean, double total, double[] means, double[] deviations) {
    this.mean = mean;
    this.total = total;
    this.means = means;
    this.deviations = deviations;
  }

  /**
   * Draws from the model.
   *
   * @param groups the values of each group, at least two groups
   * @param random makes the draws
   */
  public static RandomModelBounds of(List<double[]> groups, RandomGenerator random) {
    double[] averages =
        groups.stream()
            .mapToDouble(group -> Arrays.stream(group).average().orElseThrow())
            .toArray();
    int count = averages.length;
    double mean = Arrays.stream(averages).average().orElseThrow();
    double between = Deviations.squares(averages);
    double inverse = groups.stream().mapToDouble(group -> 1.0 / group.length).sum() / count;
    int degreesOfFreedom = groups.stream().mapToInt(group -> group.length - 1).sum();
    double within = groups.stream().mapToDouble(Deviations::squares).sum();
    UniformRandomProvider source = random::nextLong;
    ContinuousDistribution.Sampler ofBetween =
        ChiSquaredDistribution.of(count - 1.0).createSampler(source);
    ContinuousDistribution.Sampler ofWithin =
        ChiSquaredDistribution.of(Math.max(1, degreesOfFreedom)).createSampler(source);
    ContinuousDistribution.Sampler normal = NormalDistribution.of(0, 1).createSampler(source);
    double[] means = new double[DRAWS];
    double[] deviations = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double ofMean = between / ofBetween.sample();
      double ofRun = degreesOfFreedom > 0 ? within / ofWithin.sample() : 0;
      means[i] = mean + normal.sample() * Math.sqrt(ofMean / count);
      deviations[i] = Math.sqrt(ofMean + (1 - inverse) * ofRun);
    }
    double total =
        Math.sqrt(
            between / (count - 1)
                + (degreesOfFreedom > 0 ? (1 - inverse) * within / degreesOfFreedom : 0));
    return new RandomModelBounds(mean, total, means, deviations);
  }

  /** The mean of the means of groups. */
  public double mean() {
    return mean;
  }

  /** The value that the given share of single values stays below, as estimated. */
  public double estimate(double share) {
    return mean + normalQuantile(share) * total;
  }

  /**
   * A bound for that value.
   *
   * @param share of single values, between 0 and 1
   * @param confidence that the value lies below the bound, between 0 and 1
   */
  public double quantile(double share, double confidence) {
    double z = normalQuantile(share);
    double[] pivots = new double[means.length];
    for (int i = 0; i < pivots.length; i++) {
      pivots[i] = means[i] + z * deviations[i];
    }
    Arrays.sort(pivots);
    double place = confidence * (pivots.length - 1);
    int below = (int) place;
    int above = Math.min(pivots.length - 1, below + 1);
    return pivots[below] + (place - below) * (pivots[above] - pivots[below]);
  }

  private static double normalQuantile(double share) {
    return NormalDistribution.of(0, 1).inverseCumulativeProbability(share);
  }
}
