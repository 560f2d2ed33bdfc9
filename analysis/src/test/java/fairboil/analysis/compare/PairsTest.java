package fairboil.analysis.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.StudentizedRange;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * All pairs against R 4.2.2: TukeyHSD(aov(...)), rstatix 0.7.2 games_howell_test and t.test, on R's
 * data sets PlantGrowth and mtcars.
 */
class PairsTest {

  private static final double[] CTRL = {4.17, 5.58, 5.18, 6.11, 4.50, 4.61, 5.17, 4.53, 5.33, 5.14};
  private static final double[] TRT1 = {4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69};
  private static final double[] TRT2 = {6.31, 5.12, 5.54, 5.50, 5.37, 5.29, 4.92, 6.15, 5.80, 5.26};

  private static final List<Sample> PLANTS =
      List.of(Sample.of("trt2", TRT2), Sample.of("trt1", TRT1), Sample.of("ctrl", CTRL));

  private static Pairs pairs(int means) {
    return new Pairs(Measure.PEAK, Comparison.BUILD, new StudentizedRange(means), 0.95);
  }

  @Test
  void tukeyOfPlantGrowth() {
    List<Comparison> pairs = pairs(3).pooled(PLANTS, Method.TUKEY_KRAMER);
    Comparison trt2AndTrt1 = pairs.get(0);
    assertThat(trt2AndTrt1.difference()).isCloseTo(0.865, within(1e-12));
    assertThat(trt2AndTrt1.interval().low()).isCloseTo(0.173783949, within(1e-8));
    assertThat(trt2AndTrt1.interval().high()).isCloseTo(1.556216051, within(1e-8));
    assertThat(trt2AndTrt1.adjustedPValue()).isCloseTo(0.012006424, within(1e-8));
    assertThat(trt2AndTrt1.pValue()).isCloseTo(0.00445923594, within(1e-10));
    assertThat(trt2AndTrt1.degreesOfFreedom()).isEqualTo(27);
    assertThat(trt2AndTrt1.verdict()).isEqualTo(Verdict.HIGHER);
    Comparison trt2AndCtrl = pairs.get(1);
    assertThat(trt2AndCtrl.difference()).isCloseTo(0.494, within(1e-12));
    assertThat(trt2AndCtrl.adjustedPValue()).isCloseTo(0.197995991, within(1e-8));
    Comparison trt1AndCtrl = pairs.get(2);
    assertThat(trt1AndCtrl.interval().low()).isCloseTo(-1.062216051, within(1e-8));
    assertThat(trt1AndCtrl.interval().high()).isCloseTo(0.320216051, within(1e-8));
    assertThat(trt1AndCtrl.adjustedPValue()).isCloseTo(0.390871144, within(1e-8));
    assertThat(trt1AndCtrl.verdict()).isEqualTo(Verdict.NOT_SETTLED);
  }

  /** Unequal sizes: mtcars, mpg by cyl. */
  @Test
  void tukeyKramerOfMtcars() {
    List<Sample> cars =
        List.of(
            Sample.of("6", new double[] {21.0, 21.0, 21.4, 18.1, 19.2, 17.8, 19.7}),
            Sample.of(
                "4",
                new double[] {22.8, 24.4, 22.8, 32.4, 30.4, 33.9, 21.5, 27.3, 26.0, 30.4, 21.4}),
            Sample.of(
                "8",
                new double[] {
                  18.7, 14.3, 16.4, 17.3, 15.2, 10.4, 10.4, 14.7, 15.5, 15.2, 13.3, 19.2, 15.8, 15.0
                }));
    List<Comparison> pairs = pairs(3).pooled(cars, Method.TUKEY_KRAMER);
    assertThat(pairs.get(0).difference()).isCloseTo(-6.92077922, within(1e-8));
    assertThat(pairs.get(0).interval().low()).isCloseTo(-10.76934983, within(1e-7));
    assertThat(pairs.get(0).interval().high()).isCloseTo(-3.07220861, within(1e-7));
    assertThat(pairs.get(0).adjustedPValue()).isCloseTo(3.42372e-4, within(1e-8));
    assertThat(pairs.get(1).difference()).isCloseTo(4.64285714, within(1e-8));
    assertThat(pairs.get(1).adjustedPValue()).isCloseTo(0.0112286814, within(1e-8));
  }

  @Test
  void gamesHowellOfPlantGrowth() {
    List<Comparison> pairs = pairs(3).unpooled(PLANTS, Method.GAMES_HOWELL);
    Comparison trt2AndTrt1 = pairs.get(0);
    assertThat(trt2AndTrt1.interval().low()).isCloseTo(0.113512993, within(1e-7));
    assertThat(trt2AndTrt1.interval().high()).isCloseTo(1.616487007, within(1e-7));
    assertThat(trt2AndTrt1.degreesOfFreedom()).isCloseTo(14.1035691, within(1e-7));
    assertThat(trt2AndTrt1.adjustedPValue()).isCloseTo(0.024, within(5e-4));
    // t.test(trt2, trt1)
    assertThat(trt2AndTrt1.pValue()).isCloseTo(0.009298404717, within(1e-10));
    assertThat(pairs.get(1).interval().low()).isCloseTo(-0.100554433, within(1e-7));
    assertThat(pairs.get(1).interval().high()).isCloseTo(1.088554433, within(1e-7));
    assertThat(pairs.get(2).adjustedPValue()).isCloseTo(0.475, within(5e-4));
  }

  /**
   * Dunnett's test of PlantGrowth against ctrl: t 1.77199638 and −1.33079080; probabilities and the
   * critical value 2.33341 by quadrature in SciPy 1.10.1 (multcomp's 2.3335 is a simulation).
   */
  @Test
  void dunnettOfPlantGrowth() {
    List<Comparison> against = pairs(3).against(PLANTS.get(2), PLANTS.subList(0, 2));
    Comparison trt2 = against.get(0);
    Comparison trt1 = against.get(1);
    assertThat(trt2.b()).isEqualTo("ctrl");
    assertThat(trt2.difference() / trt2.standardError()).isCloseTo(1.77199638, within(1e-7));
    assertThat(trt2.adjustedPValue()).isCloseTo(0.1534858606, within(1e-7));
    assertThat(trt1.adjustedPValue()).isCloseTo(0.3226956863, within(1e-7));
    assertThat(trt2.interval().high() - trt2.difference())
        .isCloseTo(2.33341 * trt2.standardError(), within(1e-5));
    assertThat(trt2.method()).isEqualTo(Method.DUNNETT);
    assertThat(trt2.effectInterval().orElseThrow().contains(0)).isTrue();
  }

  /** t.test(extra ~ group, sleep) and TOST with margins of 1: the 90 % interval of trt1 - ctrl. */
  @Test
  void twoThingsAreWelchsTest() {
    double[] one = {.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0, 2};
    double[] two = {1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    Comparison sleep =
        pairs(2)
            .unpooled(List.of(Sample.of("1", one), Sample.of("2", two)), Method.WELCH_BUILD_MEANS)
            .get(0);
    assertThat(sleep.degreesOfFreedom()).isCloseTo(17.77647352, within(1e-8));
    assertThat(sleep.pValue()).isCloseTo(0.07939414019, within(1e-10));
    assertThat(sleep.adjustedPValue()).isEqualTo(sleep.pValue());
    assertThat(sleep.interval().low()).isCloseTo(-3.365483231, within(1e-8));
    assertThat(sleep.interval().high()).isCloseTo(0.2054832307, within(1e-8));
    // the 90 % interval is -3.053381497 to -0.1066185027: 3.05 would be called no different
    assertThat(sleep.margin()).isCloseTo(3.053381497, within(1e-8));
    // effectsize 0.8.3: Hedges' g of the pooled sd -0.796935239, at 18 degrees of freedom
    Comparison pooled =
        pairs(2)
            .pooled(List.of(Sample.of("1", one), Sample.of("2", two)), Method.POOLED_BUILD_MEANS)
            .get(0);
    assertThat(pooled.effectSize()).isCloseTo(-0.796935239, within(1e-8));
    assertThat(pooled.pValue()).isCloseTo(0.07918671422, within(1e-10));
  }

  @Test
  void equalValuesAndSingleOnesBreakNothing() {
    List<Sample> equal =
        List.of(
            Sample.of("a", new double[] {3, 3}),
            Sample.of("b", new double[] {3, 3}),
            Sample.of("c", new double[] {3}));
    assertThat(pairs(3).pooled(equal, Method.TUKEY_KRAMER))
        .hasSize(3)
        .allSatisfy(
            pair -> {
              assertThat(pair.verdict()).isEqualTo(Verdict.NOT_SETTLED);
              assertThat(pair.adjustedPValue()).isEqualTo(1);
              assertThat(pair.effectSize()).isZero();
            });
    assertThat(pairs(3).unpooled(equal, Method.GAMES_HOWELL)).hasSize(1);
    List<Sample> single =
        List.of(Sample.of("a", new double[] {3}), Sample.of("b", new double[] {4}));
    assertThat(pairs(2).pooled(single, Method.POOLED_BUILD_MEANS)).isEmpty();
  }
}
