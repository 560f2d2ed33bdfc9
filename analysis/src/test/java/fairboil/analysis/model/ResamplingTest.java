package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.Interval;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Rank tests, permutations, Theil–Sen and variance components, against R 4.2.2 and theory. */
class ResamplingTest {

  /** The example of R's wilcox.test: W = 35, exact two-sided p 0.2544122544. */
  @Test
  void rankSumOfRsExample() {
    double[] x = {.80, .83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, .73, 1.46};
    double[] y = {1.15, .88, .90, .74, 1.21};
    RankSum test = RankSum.of(x, y);
    assertThat(test.method()).isEqualTo(RankSum.Method.EXACT);
    assertThat(test.pValue()).isCloseTo(0.2544122544, within(1e-10));
    assertThat(test.superiority()).isCloseTo(35.0 / 50, within(1e-12));
  }

  /** PlantGrowth of R, trt1 against trt2: W = 16, exact p 0.008930697785. */
  @Test
  void rankSumOfPlantGrowth() {
    double[] trt1 = {4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69};
    double[] trt2 = {6.31, 5.12, 5.54, 5.50, 5.37, 5.29, 4.92, 6.15, 5.80, 5.26};
    assertThat(RankSum.of(trt1, trt2).pValue()).isCloseTo(0.008930697785, within(1e-12));
  }

  /** Smallest two-sided p that sizes allow: (3, 3) 0.1, (4, 4) 2/70, (5, 5) 2/252. */
  @Test
  void rankSumHasAFloor() {
    assertThat(RankSum.of(new double[] {1, 2, 3}, new double[] {4, 5, 6}).pValue())
        .isCloseTo(0.1, within(1e-12));
    assertThat(RankSum.of(new double[] {1, 2, 3, 4}, new double[] {5, 6, 7, 8}).pValue())
        .isCloseTo(2 / 70.0, within(1e-12));
  }

  @Test
  void runsThatDidNotBoilRankLast() {
    double never = Double.POSITIVE_INFINITY;
    RankSum test =
        RankSum.of(new double[] {410, 420, 430, 440}, new double[] {450, 460, never, never});
    assertThat(test.superiority()).isZero();
    assertThat(test.pValue()).isCloseTo(2 / 70.0, within(1e-12));
  }

  /** wilcox.test on R's sleep, 10 against 10 with ties, normal: p 0.06932757543. */
  @Test
  void rankSumByNormalApproximation() {
    double[] one = {.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0, 2};
    double[] two = {1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    assertThat(RankSum.approximatePValue(one, two)).isCloseTo(0.06932757543, within(1e-10));
    double[] many = new double[40];
    Arrays.setAll(many, i -> i);
    double[] more = new double[40];
    Arrays.setAll(more, i -> i + 9.5);
    assertThat(RankSum.of(many, more).method()).isEqualTo(RankSum.Method.APPROXIMATE);
  }

  @Test
  void aPerfectLineOfFourIsAsSteepInTwoDealsOf24() {
    double[] x = {1, 2, 3, 4};
    SlopePermutation test =
        SlopePermutation.of(
            x, new double[] {2, 4, 6, 8}, Collections.nCopies(4, "one"), new SplittableRandom(1));
    assertThat(test.method()).isEqualTo(SlopePermutation.Method.ALL);
    assertThat(test.pValue()).isCloseTo(2 / 24.0, within(1e-12));
    assertThat(test.floor()).isCloseTo(2 / 24.0, within(1e-12));
  }

  /**
   * Of the 24 orders of 1, 2, 3, 7 against 1, 2, 4, 9 the sorted one is the steepest, by hand: sums
   * of products about the means 28 and, sorted the other way, −22, so that no other is as steep.
   */
  @Test
  void unequalStepsAreAsSteepInOneDealOf24() {
    SlopePermutation test =
        SlopePermutation.of(
            new double[] {1, 2, 3, 7},
            new double[] {1, 2, 4, 9},
            Collections.nCopies(4, "one"),
            new SplittableRandom(1));
    assertThat(test.pValue()).isCloseTo(1 / 24.0, within(1e-12));
    assertThat(test.floor()).isCloseTo(1 / 24.0, within(1e-12));
  }

  /** Two equal y can change places: each slope comes twice at least. */
  @Test
  void equalValuesRaiseTheFloor() {
    double[] x = {1, 2, 3, 7};
    double[] y = {1, 1, 4, 9};
    SlopePermutation test =
        SlopePermutation.of(x, y, Collections.nCopies(4, "one"), new SplittableRandom(1));
    assertThat(test.floor()).isCloseTo(2 / 24.0, within(1e-12));
    double[] flat = {5, 5, 5, 5};
    assertThat(
            SlopePermutation.of(x, flat, Collections.nCopies(4, "one"), new SplittableRandom(1))
                .floor())
        .isOne();
  }

  @Test
  void noShareLiesUnderTheFloor() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 300; i++) {
      int n = 2 + random.nextInt(5);
      double[] x = random.doubles(n).map(v -> Math.floor(4 * v)).toArray();
      double[] y = random.doubles(n).toArray();
      List<String> strata = random.ints(n, 0, 2).mapToObj(String::valueOf).toList();
      SlopePermutation test = SlopePermutation.of(x, y, strata, random);
      assertThat(test.pValue()).isBetween(test.floor(), 1.0);
    }
  }

  /** Two strata of three: 36 deals; the steepest comes about twice, once each way. */
  @Test
  void dealsStayWithinStrata() {
    double[] x = {1, 2, 3, 11, 12, 13};
    double[] y = {5, 6, 7, 1, 2, 3};
    List<String> strata = List.of("a", "a", "a", "b", "b", "b");
    assertThat(SlopePermutation.of(x, y, strata, new SplittableRandom(1)).pValue())
        .isCloseTo(2 / 36.0, within(1e-12));
  }

  @Test
  void sampledDealsAgreeWithStudentsT() {
    double[] x = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
    double[] y = {2.1, 1.2, 3.9, 2.5, 4.4, 2.9, 4.1, 5.9, 3.1, 5.2};
    SlopePermutation test =
        SlopePermutation.of(x, y, Collections.nCopies(10, "one"), new SplittableRandom(1));
    assertThat(test.method()).isEqualTo(SlopePermutation.Method.SAMPLE);
    double student = LinearFit.of(Regressors.line("x", x), y).orElseThrow().pValue("x");
    assertThat(test.pValue()).isCloseTo(student, within(0.005));
  }

  /** longley of R, Employed on GNP: slope and interval by scipy 1.10.1 stats.theilslopes. */
  @Test
  void theilSenOfLongley() {
    double[] gnp = Arrays.stream(Strd.LONGLEY_GNP).map(v -> v / 1000).toArray();
    double[] employed = Arrays.stream(Strd.LONGLEY_EMPLOYED).map(v -> v / 1000).toArray();
    TheilSen fit = TheilSen.of(gnp, employed, 0.95).orElseThrow();
    assertThat(fit.slope()).isCloseTo(0.0345424388, within(1e-9));
    assertThat(fit.interval().orElseThrow().low()).isCloseTo(0.0309262627, within(2e-4));
    assertThat(fit.interval().orElseThrow().high()).isCloseTo(0.0384262530, within(2e-4));
    assertThat(fit.confidence()).isBetween(0.95, 0.96);
  }

  /** With four points even the widest interval misses in 2 of 24 orders: 91.7 %. */
  @Test
  void fourPointsAllowNo95PercentInterval() {
    double[] x = {1, 2, 3, 4};
    double[] y = {1, 3, 2, 5};
    assertThat(TheilSen.of(x, y, 0.95).orElseThrow().interval()).isEmpty();
    assertThat(TheilSen.of(x, y, 0.90).orElseThrow().confidence())
        .isCloseTo(1 - 2 / 24.0, within(1e-12));
    assertThat(TheilSen.of(new double[] {1, 1}, new double[] {1, 2}, 0.9)).isEmpty();
  }

  /** Dyestuff of lme4: mean squares 11271.5 and 2451.25 by R's aov. */
  @Test
  void componentsOfDyestuff() {
    List<double[]> batches =
        List.of(
            new double[] {1545, 1440, 1440, 1520, 1580},
            new double[] {1540, 1555, 1490, 1560, 1495},
            new double[] {1595, 1550, 1605, 1510, 1560},
            new double[] {1445, 1440, 1595, 1465, 1545},
            new double[] {1595, 1630, 1515, 1635, 1625},
            new double[] {1520, 1455, 1450, 1480, 1445});
    VarianceComponents components = VarianceComponents.of(batches).orElseThrow();
    assertThat(components.between()).isCloseTo(11271.5, within(1e-8));
    assertThat(components.within()).isCloseTo(2451.25, within(1e-8));
    assertThat(components.sdBetween()).isCloseTo(Math.sqrt(1764.05), within(1e-9));
    // 24 * 2451.25 / qchisq(c(.975, .025), 24)
    Interval within = components.intervalWithin(0.95);
    assertThat(within.low()).isCloseTo(Math.sqrt(58830 / 39.36407703), within(1e-6));
    assertThat(within.high()).isCloseTo(Math.sqrt(58830 / 12.40115022), within(1e-6));
    // lme4's profile interval is 12.2 to 84.1; this one is made another way and near it
    Interval between = components.intervalBetween(0.95);
    assertThat(between.low()).isBetween(5.0, 20.0);
    assertThat(between.high()).isBetween(84.0, 125.0);
  }
}
