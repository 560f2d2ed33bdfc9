package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Deviations;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.model.RandomModelBounds;
import fairboil.analysis.model.ToleranceFactor;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.finding.Message;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What runs say of 19 runs in 20: the value that they stay below (at most), stay above (at least),
 * or the two between which they lie (no different from).
 *
 * @param relation which of them
 * @param shared standard uncertainty that all runs share, added once
 */
record MostRuns(Relation relation, double shared) {

  static final double SHARE = 0.95;

  private static final int FEWEST_BUILDS = 3;

  /** The bound of runs of one stove, by factors of its scatter. */
  Evidence ofOneBuild(double[] runs, Optional<Message> reason) {
    if (runs.length < 2) {
      return Evidence.none(runs.length, 1, ClaimSays.SINGLE_RUN.with());
    }
    double mean = Arrays.stream(runs).average().orElseThrow();
    double sd = Math.sqrt(Deviations.squares(runs) / (runs.length - 1));
    return new Evidence(
            confidence -> Optional.of(byFactors(mean, sd, runs.length, confidence)),
            runs.length,
            1,
            reason)
        .with(MostRunsOutlook.ofOneBuild(this, mean, sd, runs.length));
  }

  private Estimate byFactors(double mean, double sd, int n, double confidence) {
    double tail = (1 - confidence) / 2;
    if (relation == Relation.NO_DIFFERENT_FROM) {
      double half = ToleranceFactor.twoSided(n, SHARE, confidence) * sd;
      return widened(mean, mean - half, mean + half, confidence);
    }
    double sign = relation == Relation.AT_MOST ? 1 : -1;
    double near = mean + sign * ToleranceFactor.oneSided(n, SHARE, tail) * sd;
    double far = mean + sign * ToleranceFactor.oneSided(n, SHARE, 1 - tail) * sd;
    return widened(
        mean + sign * normal(SHARE) * sd, Math.min(near, far), Math.max(near, far), confidence);
  }

  /** The bound of runs of stoves like these, by simulation of the one-way random model. */
  Evidence ofBuilds(List<double[]> builds, RandomGenerator random) {
    int runs = builds.stream().mapToInt(values -> values.length).sum();
    if (builds.size() < FEWEST_BUILDS) {
      return Evidence.none(runs, builds.size(), ClaimSays.TWO_BUILDS.with());
    }
    RandomModelBounds bounds = RandomModelBounds.of(builds, random);
    long seed = random.nextLong();
    return new Evidence(
            confidence -> Optional.of(bySimulation(bounds, confidence)),
            runs,
            builds.size(),
            Optional.empty())
        .with(MostRunsOutlook.ofBuilds(this, builds, seed));
  }

  private Estimate bySimulation(RandomModelBounds bounds, double confidence) {
    double tail = (1 - confidence) / 2;
    if (relation == Relation.NO_DIFFERENT_FROM) {
      double outside = (1 - SHARE) / 2;
      return widened(
          bounds.mean(),
          bounds.quantile(outside, tail),
          bounds.quantile(1 - outside, 1 - tail),
          confidence);
    }
    double share = relation == Relation.AT_MOST ? SHARE : 1 - SHARE;
    return widened(
        bounds.estimate(share),
        bounds.quantile(share, tail),
        bounds.quantile(share, 1 - tail),
        confidence);
  }

  /** Adds what all runs share to each arm of an interval, in squares. */
  private Estimate widened(double value, double low, double high, double confidence) {
    double more = Measured.coverageFactor(confidence, Double.POSITIVE_INFINITY) * shared;
    double down = Math.hypot(Math.max(0, value - low), more);
    double up = Math.hypot(Math.max(0, high - value), more);
    return new Estimate(value, new Interval(value - down, value + up));
  }

  static double normal(double share) {
    return NormalDistribution.of(0, 1).inverseCumulativeProbability(share);
  }
}
