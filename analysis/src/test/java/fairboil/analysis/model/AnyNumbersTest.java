package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import fairboil.analysis.OddNumbers;
import fairboil.analysis.figure.Interval;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** No finite numbers make a statistic throw, or take for ever. */
class AnyNumbersTest {

  private static final Duration LIMIT = Duration.ofSeconds(60);

  private static final double[] CONFIDENCES = {0.5, 0.9, 0.95, 0.9995, 0.9999};

  @Property(tries = 300, seed = "1")
  void noncentralT(@ForAll long seed) {
    OddNumbers odd = new OddNumbers(seed);
    double df = odd.oneOf(1, 1.3, 4, 30, 998, 1e6, 1e9, Double.POSITIVE_INFINITY);
    double t = odd.any();
    double shift = odd.any();
    double chance = assertTimeoutPreemptively(LIMIT, () -> Noncentral.t(t, df, shift));
    assertThat(chance).as("t %s, df %s, shift %s", t, df, shift).isBetween(0.0, 1.0);
    assertThat(Noncentral.t(Math.nextUp(t) + Math.abs(t) / 2, df, shift))
        .as("rises from t %s, df %s, shift %s", t, df, shift)
        .isGreaterThan(chance - 1e-9);
  }

  @Property(tries = 60, seed = "1")
  void testsAndSizes(@ForAll long seed) {
    assertTimeoutPreemptively(LIMIT, () -> testsAndSizes(new OddNumbers(seed)));
  }

  private static void testsAndSizes(OddNumbers odd) {
    double confidence = odd.oneOf(CONFIDENCES);
    double df = odd.oneOf(1, 1.01, 2, 7, 400);
    EffectSize.of(odd.any(), odd.positive(), odd.positive(), df, confidence);
    EffectSize.of(odd.any(), 0, 0, df, confidence);
    double factor = odd.oneOf(0.1, 2, 12.7, 6000);
    assertThat(TwoSidedTests.detection(odd.any(), odd.positive(), df, factor)).isBetween(0.0, 1.0);
    assertThat(TwoSidedTests.equivalence(odd.positive(), odd.positive(), df, 1 - confidence / 2))
        .isBetween(-1e-9, 1 + 1e-9);
    assertThat(TwoSidedTests.narrowness(odd.positive(), odd.positive(), df, factor))
        .isBetween(0.0, 1.0);
    int n = 2 + odd.below(40);
    double k = ToleranceFactor.oneSided(n, 0.95, odd.oneOf(1 - confidence, confidence));
    assertThat(k).isFinite();
    double low = odd.any();
    assertThat(
            Noncentral.within(n, Math.abs(k), low, low + odd.positive(), odd.any(), odd.positive()))
        .isBetween(-1 - 1e-9, 1 + 1e-9);
    assertThat(LinearFit.pValue(odd.any(), odd.positive(), df)).isBetween(0.0, 1.0);
    assertThat(new StudentizedRange(2 + odd.below(3)).cumulativeProbability(odd.positive(), df))
        .isBetween(0.0, 1.0);
    double[] sizes = {1, 3};
    assertThat(new Dunnett(2, sizes, df).cumulativeProbability(odd.positive())).isBetween(0.0, 1.0);
  }

  @Property(tries = 200, seed = "1")
  void linesAndRanks(@ForAll long seed) {
    assertTimeoutPreemptively(LIMIT, () -> linesAndRanks(new OddNumbers(seed)));
  }

  private static void linesAndRanks(OddNumbers odd) {
    int n = 1 + odd.below(8);
    double[] x = odd.values(n);
    double[] y = odd.values(n);
    double confidence = odd.oneOf(CONFIDENCES);
    Regressors line = Regressors.line("x", x);
    LinearFit.of(line, y).ifPresent(fit -> everything(fit, confidence));
    LinearFit.of(line.and("z", odd.values(n)), y).ifPresent(fit -> everything(fit, confidence));
    double[] variances = IntStream.range(0, n).mapToDouble(i -> odd.positive()).toArray();
    MandelPaule.fit(line, y, variances).ifPresent(fit -> everything(fit, confidence));
    int[] groups = IntStream.range(0, n).map(i -> i / 2).toArray();
    RandomIntercept.fit(line, y, groups).ifPresent(fit -> fit.degreesOfFreedom("x"));
    TheilSen.of(x, y, confidence);
    RankSum rank = RankSum.of(x, y);
    assertThat(rank.pValue()).isBetween(0.0, 1.0);
    List<String> strata = IntStream.range(0, n).mapToObj(i -> "s" + i % 2).toList();
    SlopePermutation deals = SlopePermutation.of(x, y, strata, new SplittableRandom(1));
    assertThat(deals.pValue()).isBetween(deals.floor(), 1.0);
    assertThat(deals.floor()).isGreaterThan(0);
  }

  private static void everything(LinearFit fit, double confidence) {
    for (String name : fit.regressors().names()) {
      fit.interval(name, confidence);
      fit.pValue(name);
      fit.robustStandardError(name);
      fit.pull(name, 0);
    }
    fit.cook(0);
    fit.rSquared();
    fit.band(confidence, fit.regressors().row(0));
  }

  @Property(tries = 100, seed = "1")
  void groups(@ForAll long seed) {
    assertTimeoutPreemptively(LIMIT, () -> groups(new OddNumbers(seed)));
  }

  private static void groups(OddNumbers odd) {
    List<double[]> groups = new ArrayList<>();
    for (int i = 0; i < 2 + odd.below(4); i++) {
      groups.add(odd.values(1 + odd.below(4)));
    }
    double confidence = odd.oneOf(CONFIDENCES);
    VarianceComponents.of(groups)
        .ifPresent(
            components -> {
              components.intervalWithin(confidence);
              components.intervalBetween(confidence);
              components.intervalTotal(confidence);
              assertThat(components.degreesOfFreedomTotal()).isGreaterThan(0);
            });
    RandomModelBounds bounds = RandomModelBounds.of(groups, new SplittableRandom(3));
    assertThat(bounds.quantile(0.95, confidence)).isFinite();
    Interval wanted = new Interval(Double.NEGATIVE_INFINITY, odd.any());
    assertThat(RandomModelPower.of(groups, 5).power(6, 0.95, 1 - confidence, wanted, true))
        .isBetween(0.0, 1.0);
    double[] all = groups.stream().flatMapToDouble(Arrays::stream).toArray();
    int[] levels = IntStream.range(0, all.length).map(i -> i % 2).toArray();
    MeanSquare left = MeanSquare.beyond(FactorSpace.of(levels), all);
    assertThat(left.squares()).isGreaterThanOrEqualTo(0);
  }
}
