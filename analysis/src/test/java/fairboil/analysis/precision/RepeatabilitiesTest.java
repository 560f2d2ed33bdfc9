package fairboil.analysis.precision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.VarianceComponents;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class RepeatabilitiesTest {

  /**
   * ISO 5725-2:1994, annex B.1 (sulfur in coal), level 1, eight laboratories as if they were
   * builds: repeatability standard deviation 0.015; the data and the result are cited from memory.
   */
  @Test
  void sulfurInCoal() {
    double[][] laboratories = {
      {.71, .71, .70, .71},
      {.69, .67, .68},
      {.66, .65, .69},
      {.67, .65, .66},
      {.70, .69, .66, .71, .69},
      {.73, .74, .73},
      {.71, .71, .69},
      {.70, .65, .68}
    };
    List<Repeatability> all = of(laboratories);
    Repeatability runs = find(all, Level.RUN_TO_RUN);
    assertThat(runs.sd()).isCloseTo(0.01512, within(5e-6));
    assertThat(runs.limit().orElseThrow()).isCloseTo(2.8 * 0.01512, within(2e-5));
    assertThat(runs.degreesOfFreedom()).isEqualTo(19);
    // ISO weights laboratories by their size and comes to 0.02160; means that count alike, for
    // which
    // the interval is made, come to within a twentieth of that
    assertThat(find(all, Level.BUILD_TO_BUILD).sd()).isCloseTo(0.0216, within(0.0216 / 20));
    assertThat(runs.relative().orElseThrow()).isCloseTo(0.01512 / 0.69, within(1e-3));
  }

  /**
   * The interval of a coefficient of variation against the one that allows for the error of the
   * mean (Vangel, The American Statistician 50, 1996; formula from memory): {@code K / sqrt(((u +
   * 2) / n - 1) K² + u / (n - 1))}, u the quantiles of chi-squared.
   */
  @Test
  void coefficientOfVariationHasItsInterval() {
    double[] runs = {270, 310, 295, 335, 300, 290, 322, 281, 305, 318};
    Repeatability scatter = find(of(new double[][] {runs}), Level.RUN_TO_RUN);
    double cv = scatter.relative().orElseThrow();
    // R: sd(runs) / mean(runs)
    assertThat(cv).isCloseTo(0.0649493325204, within(1e-9));
    Interval interval = scatter.relativeInterval().orElseThrow();
    double[] chiSquared = {19.0227678, 2.7003895}; // R: qchisq(c(.975, .025), 9)
    double[] ends = {interval.low(), interval.high()};
    for (int i = 0; i < 2; i++) {
      double u = chiSquared[i];
      double vangel = cv / Math.sqrt(((u + 2) / 10 - 1) * cv * cv + u / 9);
      assertThat(ends[i]).isCloseTo(vangel, within(0.01 * vangel));
    }
    assertThat(scatter.limitInterval().orElseThrow().high())
        .isCloseTo(2.8 * scatter.interval().high(), within(1e-9));
  }

  /** Dyestuff2 of lme4 has less scatter between batches than chance: not seen, up to so much. */
  @Test
  void scatterThatIsNotSeenIsZeroUpToSomething() {
    double[][] batches = {
      {7.298, 3.846, 2.434, 9.566, 7.990},
      {5.220, 6.556, 0.608, 11.788, -0.892},
      {0.110, 10.386, 13.434, 5.510, 8.166},
      {2.212, 4.852, 7.092, 9.288, 4.980},
      {0.282, 9.014, 4.458, 9.446, 7.198},
      {1.722, 4.782, 8.106, 0.758, 3.758}
    };
    Repeatability between = find(of(batches), Level.BUILD_TO_BUILD);
    assertThat(between.sd()).isZero();
    assertThat(between.interval().low()).isZero();
    assertThat(between.interval().high()).isPositive();
  }

  @Test
  void fewDataGiveNothingRatherThanNonsense() {
    assertThat(of(new double[][] {{400}})).isEmpty();
    assertThat(of(new double[][] {{400}, {410}, {420}})).isEmpty();
    assertThat(of(new double[][] {{400, 402}})).hasSize(2);
    assertThat(find(of(new double[][] {{400, 400}, {400, 400}}), Level.RUN_TO_RUN).sd()).isZero();
  }

  /** Intervals between builds cover the truth: six builds of four, σb = σr and σb = 0. */
  @Test
  void intervalsBetweenBuildsCover() {
    RandomGenerator random = new SplittableRandom(5);
    for (double truth : new double[] {0, 1}) {
      int covered = 0;
      int trials = 3000;
      for (int trial = 0; trial < trials; trial++) {
        List<double[]> builds = new ArrayList<>();
        for (int build = 0; build < 6; build++) {
          double mean = truth * random.nextGaussian();
          double[] runs = new double[4];
          for (int run = 0; run < 4; run++) {
            runs[run] = mean + random.nextGaussian();
          }
          builds.add(runs);
        }
        Interval interval = VarianceComponents.of(builds).orElseThrow().intervalBetween(0.95);
        covered += interval.contains(truth) ? 1 : 0;
      }
      // three standard errors of a share of 0.95 are 0.012; at 0 the lower end is cut off
      assertThat((double) covered / trials).isBetween(0.938, truth == 0 ? 1.0 : 0.962);
    }
  }

  private static Repeatability find(List<Repeatability> all, Level level) {
    return all.stream()
        .filter(each -> each.level() == level && each.measure() == Measure.BOIL_TIME)
        .findFirst()
        .orElseThrow();
  }

  private static List<Repeatability> of(double[][] builds) {
    TestStudy sheets = new TestStudy();
    for (int i = 0; i < builds.length; i++) {
      sheets.build("B" + i, "one");
      for (int j = 0; j < builds[i].length; j++) {
        sheets.run("B" + i + "-" + j, "B" + i, row -> row);
      }
    }
    Study study = sheets.finish();
    List<RunResult> runs = new ArrayList<>();
    for (int i = 0; i < builds.length; i++) {
      for (int j = 0; j < builds[i].length; j++) {
        runs.add(TestRun.of(study, "B" + i + "-" + j).boilTime(builds[i][j]).result());
      }
    }
    return Repeatabilities.of(runs, 0.95).scatter();
  }
}
