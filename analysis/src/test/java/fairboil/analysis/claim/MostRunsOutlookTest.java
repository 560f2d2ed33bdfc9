package fairboil.analysis.claim;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.model.RandomModelBounds;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many would settle what is claimed of most runs. */
class MostRunsOutlookTest {

  /** As found: variances of means and of runs 1 and 1, of five builds of four runs. */
  private static final double SD_OF_BUILDS = Math.sqrt(0.75);

  private static int number(Outlook outlook, double estimate, Interval bounds) {
    Message clause =
        outlook
            .needed(new Estimate(estimate, Interval.around(estimate, 1)), bounds, 0.95)
            .orElseThrow();
    assertThat(clause.says(OutlookSays.ABOUT)).as("%s", clause).isTrue();
    return (int) ((Argument.Count) clause.arguments().get(0)).high();
  }

  /**
   * Runs of mean 0 and standard deviation 1, a bound so far above. R 4.2.2: with {@code k = qt(1 -
   * tail, n - 1, qnorm(.95) * sqrt(n))}, tail 0.025 or 0.975, {@code pt(k, n - 1, sqrt(n) * bound)}
   * leaves 0.8 on its side from n.
   */
  @ParameterizedTest
  @CsvSource({"2.5, 38", "3, 19", "1, 34", "0.5, 9"})
  void burnsOfOneBuild(double bound, int expected) {
    Outlook outlook = MostRunsOutlook.ofOneBuild(new MostRuns(Relation.AT_MOST, 0), 0, 1, 4);
    Interval bounds = new Interval(Double.NEGATIVE_INFINITY, bound);
    assertThat(number(outlook, MostRuns.normal(0.95), bounds)).isEqualTo(expected);
    Outlook mirrored = MostRunsOutlook.ofOneBuild(new MostRuns(Relation.AT_LEAST, 0), 0, 1, 4);
    Interval above = new Interval(-bound, Double.POSITIVE_INFINITY);
    assertThat(number(mirrored, -MostRuns.normal(0.95), above)).isEqualTo(expected);
  }

  /** Whole studies of the number named are made up and judged: about four in five settle it. */
  @ParameterizedTest
  @CsvSource({"4.5", "1.5"})
  void buildsThatAreNamedSettleIt(double bound) {
    Outlook outlook = MostRunsOutlook.ofBuilds(new MostRuns(Relation.AT_MOST, 0), asFound(), 7);
    boolean holds = bound > 1.645 * Math.sqrt(1.75);
    double estimate = 1.645 * Math.sqrt(1.75);
    int builds = number(outlook, estimate, new Interval(Double.NEGATIVE_INFINITY, bound));
    RandomGenerator random = new SplittableRandom(9);
    int settled = 0;
    int trials = 200;
    for (int trial = 0; trial < trials; trial++) {
      RandomModelBounds bounds = RandomModelBounds.of(study(builds, random), random);
      settled +=
          (holds ? bounds.quantile(0.95, 0.975) < bound : bounds.quantile(0.95, 0.025) > bound)
              ? 1
              : 0;
    }
    // three standard errors of a share of 0.8 of 200 studies, here and where the number comes from
    assertThat((double) settled / trials).as("%s builds", builds).isBetween(0.68, 0.92);
  }

  @Test
  void whatTheSensorSharesMayBeTooMuch() {
    Outlook outlook = MostRunsOutlook.ofOneBuild(new MostRuns(Relation.AT_MOST, 1), 0, 1, 4);
    Estimate estimate = new Estimate(1.645, new Interval(1, 6));
    assertThat(outlook.needed(estimate, new Interval(Double.NEGATIVE_INFINITY, 2), 0.95))
        .hasValue(OutlookSays.NO_NUMBER.with(Argument.clause(OutlookSays.BURNS_OF_THAT_STOVE)));
  }

  /** Five builds whose means have variance 1, and whose four runs have variance 1. */
  private static List<double[]> asFound() {
    List<double[]> builds = new ArrayList<>();
    double spread = Math.sqrt(4 / 10.0);
    double half = Math.sqrt(3) / 2;
    for (int build = -2; build <= 2; build++) {
      double mean = build * spread;
      builds.add(new double[] {mean - half, mean - half, mean + half, mean + half});
    }
    return builds;
  }

  private static List<double[]> study(int builds, RandomGenerator random) {
    List<double[]> all = new ArrayList<>();
    for (int build = 0; build < builds; build++) {
      double mean = SD_OF_BUILDS * random.nextGaussian();
      double[] runs = new double[4];
      for (int run = 0; run < runs.length; run++) {
        runs[run] = mean + random.nextGaussian();
      }
      all.add(runs);
    }
    return all;
  }
}
