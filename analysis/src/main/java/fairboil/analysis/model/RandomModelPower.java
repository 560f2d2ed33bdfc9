package fairboil.analysis.model;

import fairboil.analysis.figure.Deviations;
import fairboil.analysis.figure.Interval;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How often a study of other groups, which scatter as these do, would put the bounds of {@link
 * RandomModelBounds} on one side of a value. Sums of squares of such studies are made up, and each
 * is judged by the same generalised pivotal quantity with fewer draws. Immutable.
 */
public final class RandomModelPower {

  private static final int STUDIES = 200;
  private static final int DRAWS = 2000;

  private final double mean;
  private final double ofMeans;
  private final double within;
  private final double inverse;
  private final long seed;

  private RandomModelPower(double mean, double ofMeans, double within, double inverse, long seed) {
    this.mean = mean;
    this.ofMeans = ofMeans;
    this.within = within;
    this.inverse = inverse;
    this.seed = seed;
  }

  /**
   * The model of groups, its components as estimated.
   *
   * @param groups the values of each, at least two groups
   * @param seed of the studies that are made up
   */
  public static RandomModelPower of(List<double[]> groups, long seed) {
    double[] means = groups.stream().mapToDouble(RandomModelPower::mean).toArray();
    int df = groups.stream().mapToInt(group -> group.length - 1).sum();
    double within = df == 0 ? 0 : groups.stream().mapToDouble(Deviations::squares).sum() / df;
    double inverse = groups.stream().mapToDouble(g -> 1.0 / g.length).average().orElseThrow();
    double ofMeans = Math.max(Deviations.squares(means) / (means.length - 1), within * inverse);
    return new RandomModelPower(mean(means), ofMeans, within, inverse, seed);
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  /**
   * The share of studies that settle it.
   *
   * @param groups how many groups a study has, of as many values each as these have
   * @param share of single values, between 0.5 and 1, that are to lie on the side of the bound
   * @param tail the chance of an error at one bound
   * @param bounds for single values; an infinite one is none
   * @param holds whether the values are to lie within the bounds, or else the quantile beyond
   */
  public double power(int groups, double share, double tail, Interval bounds, boolean holds) {
    UniformRandomProvider random = new SplittableRandom(seed + groups)::nextLong;
    double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(share);
    double df = groups * (1 / inverse - 1);
    Draws draws = new Draws(DRAWS, groups, df, random);
    Draws studies = new Draws(STUDIES, groups, df, random);
    int settled = 0;
    for (int i = 0; i < STUDIES; i++) {
      double centre = mean + studies.normal[i] * Math.sqrt(ofMeans / groups);
      double between = ofMeans * studies.between[i];
      double run = df > 0 ? (1 - inverse) * within * studies.within[i] / df : 0;
      Study study = new Study(centre, between, run * df, groups);
      settled += study.settles(draws, z, tail, bounds, holds) ? 1 : 0;
    }
    return (double) settled / STUDIES;
  }

  /** Chi-squared and normal draws. */
  private static final class Draws {

    private final double[] normal;
    private final double[] between;
    private final double[] within;

    Draws(int count, int groups, double df, UniformRandomProvider random) {
      normal = many(count, NormalDistribution.of(0, 1).createSampler(random));
      between = many(count, ChiSquaredDistribution.of(groups - 1.0).createSampler(random));
      within = many(count, ChiSquaredDistribution.of(df > 0 ? df : 1).createSampler(random));
    }

    private static double[] many(int count, ContinuousDistribution.Sampler sampler) {
      double[] many = new double[count];
      Arrays.setAll(many, i -> sampler.sample());
      return many;
    }
  }

  /** What a study found: its mean, and sums of squares of means and, reduced, of values. */
  private record Study(double mean, double between, double within, int groups) {

    boolean settles(Draws draws, double z, double tail, Interval bounds, boolean holds) {
      boolean above =
          !Double.isFinite(bounds.high()) || clears(draws, z, tail, bounds.high(), 1, holds);
      boolean below =
          !Double.isFinite(bounds.low()) || clears(draws, z, tail, bounds.low(), -1, holds);
      return above && below;
    }

    /** Whether the pivots lie on one side of the bound but for a share of {@code tail}. */
    private boolean clears(
        Draws draws, double z, double tail, double bound, int side, boolean inside) {
      int allowed = (int) (tail * draws.normal.length);
      int wrong = 0;
      for (int i = 0; i < draws.normal.length && wrong <= allowed; i++) {
        double ofMean = between / draws.between[i];
        double pivot =
            side * mean
                + draws.normal[i] * Math.sqrt(ofMean / groups)
                + z * Math.sqrt(ofMean + within / draws.within[i]);
        wrong += pivot > side * bound == inside ? 1 : 0;
      }
      return wrong <= allowed;
    }
  }
}
