package fairboil.analysis.compare;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.RandomModelBounds;
import fairboil.analysis.model.StudentizedRange;
import fairboil.analysis.model.VarianceComponents;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Truth by simulation: families of comparisons, and bounds for most runs. */
class ComparisonTruthTest {

  private static final double SQRT_HALF = Math.sqrt(0.5);

  @Test
  void buildsThatDoNotDifferAreRarelySaidToDiffer() {
    assertThat(families(1200)).isBetween(0.029, 0.071);
  }

  @Test
  @Tag("long")
  void buildsThatDoNotDifferAreRarelySaidToDifferAtLength() {
    assertThat(printed("family-wise errors of six builds", families(10_000))).isBetween(0.04, 0.06);
  }

  /** Any of the 15 pairs of six like builds of four runs. */
  private static double families(int trials) {
    RandomGenerator random = new SplittableRandom(31);
    Pairs pairs = new Pairs(Measure.PEAK, Comparison.BUILD, new StudentizedRange(6), 0.95);
    int alarms = 0;
    for (int trial = 0; trial < trials; trial++) {
      List<Sample> builds = new ArrayList<>();
      for (int build = 0; build < 6; build++) {
        builds.add(Sample.of("B" + build, values(4, 0, 1, random)));
      }
      boolean alarm =
          pairs.pooled(builds, Method.TUKEY_KRAMER).stream()
              .anyMatch(pair -> pair.verdict() != Verdict.NOT_SETTLED);
      alarms += alarm ? 1 : 0;
    }
    return (double) alarms / trials;
  }

  @Test
  void designsThatDoNotDifferAreRarelySaidToDiffer() {
    assertThat(designs(1500)).isBetween(0.03, 0.07);
  }

  @Test
  @Tag("long")
  void designsThatDoNotDifferAreRarelySaidToDifferAtLength() {
    assertThat(printed("errors of two designs", designs(10_000))).isBetween(0.04, 0.06);
  }

  /** Two designs of four builds of three runs each, builds differing as much as runs. */
  private static double designs(int trials) {
    RandomGenerator random = new SplittableRandom(32);
    Pairs pairs = new Pairs(Measure.PEAK, Comparison.DESIGN, new StudentizedRange(2), 0.95);
    int alarms = 0;
    for (int trial = 0; trial < trials; trial++) {
      List<Sample> designs = new ArrayList<>();
      for (String design : List.of("a", "b")) {
        double[] means = new double[4];
        for (int build = 0; build < means.length; build++) {
          double[] runs = values(3, random.nextGaussian(), 1, random);
          means[build] = Arrays.stream(runs).average().orElseThrow();
        }
        designs.add(Sample.of(design, means));
      }
      Comparison pair = pairs.pooled(designs, Method.POOLED_BUILD_MEANS).get(0);
      alarms += pair.verdict() == Verdict.NOT_SETTLED ? 0 : 1;
    }
    return (double) alarms / trials;
  }

  /** A bound that 19 runs in 20 are to stay below holds in 19 studies of 20 at least. */
  @Test
  void boundsForMostRunsHold() {
    assertThat(bounds(250)).isGreaterThan(0.95 - 0.045);
  }

  @Test
  @Tag("long")
  void boundsForMostRunsHoldAtLength() {
    assertThat(printed("bounds for most runs that hold", bounds(3000)))
        .isGreaterThanOrEqualTo(0.95);
  }

  private static double bounds(int trials) {
    RandomGenerator random = new SplittableRandom(33);
    int held = 0;
    for (int trial = 0; trial < trials; trial++) {
      List<double[]> builds = new ArrayList<>();
      for (int build = 0; build < 5; build++) {
        builds.add(values(3 + build % 2, SQRT_HALF * random.nextGaussian(), SQRT_HALF, random));
      }
      double bound = RandomModelBounds.of(builds, random).quantile(0.95, 0.95);
      held += bound >= 1.644853627 ? 1 : 0;
    }
    return (double) held / trials;
  }

  /** All pairs, then all against the first, of builds whose true means are 0, 1, 2 … */
  @Test
  void intervalsOfDifferencesCoverThem() {
    double[] covered = covered(400, 10);
    assertThat(covered[0]).isBetween(0.95 - 0.045, 0.95 + 0.035);
    assertThat(covered[1]).isGreaterThan(0.82); // of 40
  }

  @Test
  @Tag("long")
  void intervalsOfDifferencesCoverThemAtLength() {
    double[] covered = covered(10_000, 3);
    assertThat(printed("all pairs covered together", covered[0])).isBetween(0.935, 0.965);
    assertThat(printed("all against one covered together", covered[1])).isBetween(0.935, 0.965);
  }

  /** Quadrature is slow: all against one in one of so many trials. */
  private static double[] covered(int trials, int oneIn) {
    RandomGenerator random = new SplittableRandom(34);
    Pairs pairs = new Pairs(Measure.PEAK, Comparison.BUILD, new StudentizedRange(4), 0.95);
    int all = 0;
    int againstFirst = 0;
    for (int trial = 0; trial < trials; trial++) {
      List<Sample> builds = new ArrayList<>();
      for (int build = 0; build < 4; build++) {
        builds.add(Sample.of(String.valueOf(build), values(4, build, 1, random)));
      }
      all += covers(pairs.pooled(builds, Method.TUKEY_KRAMER)) ? 1 : 0;
      if (trial % oneIn == 0) {
        againstFirst += covers(pairs.against(builds.get(0), builds.subList(1, 4))) ? oneIn : 0;
      }
    }
    return new double[] {(double) all / trials, (double) againstFirst / trials};
  }

  private static boolean covers(List<Comparison> pairs) {
    return pairs.stream()
        .allMatch(
            pair ->
                pair.interval()
                    .contains(Integer.parseInt(pair.a()) - (double) Integer.parseInt(pair.b())));
  }

  /** The interval of the scatter between builds, of six builds of four runs. */
  @Test
  void intervalsOfTheScatterBetweenBuildsCoverIt() {
    for (double sd : new double[] {0.5, 1, 2}) {
      assertThat(scatter(sd, 1500)).as("σb %s", sd).isBetween(0.95 - 0.025, 0.95 + 0.025);
    }
    assertThat(scatter(0, 1500)).isGreaterThan(0.95 - 0.018);
  }

  @Test
  @Tag("long")
  void intervalsOfTheScatterBetweenBuildsCoverItAtLength() {
    for (double sd : new double[] {0.5, 1, 2}) {
      assertThat(printed("σb covered, σb/σr " + sd, scatter(sd, 10_000))).isBetween(0.935, 0.965);
    }
    assertThat(printed("σb covered, σb 0", scatter(0, 10_000))).isGreaterThan(0.95);
  }

  private static double scatter(double sd, int trials) {
    RandomGenerator random = new SplittableRandom(35);
    int covered = 0;
    for (int trial = 0; trial < trials; trial++) {
      List<double[]> builds = new ArrayList<>();
      for (int build = 0; build < 6; build++) {
        builds.add(values(4, sd * random.nextGaussian(), 1, random));
      }
      covered +=
          VarianceComponents.of(builds).orElseThrow().intervalBetween(0.95).contains(sd) ? 1 : 0;
    }
    return (double) covered / trials;
  }

  @SuppressWarnings("SystemOut") // what the long tests found is part of their result
  private static double printed(String what, double share) {
    System.out.printf(Locale.ROOT, "%s: %.4f%n", what, share);
    return share;
  }

  private static double[] values(int count, double mean, double sd, RandomGenerator random) {
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = mean + sd * random.nextGaussian();
    }
    return values;
  }
}
