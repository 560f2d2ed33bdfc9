package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Noncentral distributions and what they tell of tests, against R 4.2.2. */
class NoncentralTest {

  private static final Offset<Double> CLOSE = within(1e-9);

  /** {@code pt(t, df, ncp)}. */
  @ParameterizedTest
  @CsvSource({
    "2, 5, 1, 0.7780746626159", "3, 10, 2.5, 0.6365823804753", "-1, 4, 0.5, 0.0861495690370",
    "0.5, 2, 3, 0.0064864868816", "6, 3, 4, 0.7088361923333", "2.1, 18, 2.8, 0.2453817573717",
    "1.5, 1, 1, 0.5378791826824", "40, 7, 30, 0.7859221225538"
  })
  void noncentralT(double t, double df, double shift, double expected) {
    assertThat(Noncentral.t(t, df, shift)).isCloseTo(expected, CLOSE);
  }

  /** Far out: the integral of the definition by mpmath 1.3.0 with 40 digits. */
  @ParameterizedTest
  @CsvSource({
    "1000, 5, 900, 0.5422399191659",
    "1e6, 8, 1e6, 0.4334701203675",
    "1e9, 3, 2e9, 0.00738316050536",
    "200, 4, 100, 0.9097656668263",
    "-50, 2, 10, 0",
    "5, 1, -3, 0.999939179748",
    "30, 500, 28, 0.9253625556878",
    "1e4, 500, 9900, 0.6162466778912",
    "1000, 1, 300, 0.7641772700384",
    "0.001, 3, 4, 3.179481006512e-5"
  })
  void noncentralTFarOut(double t, double df, double shift, double expected) {
    assertThat(Noncentral.t(t, df, shift)).isCloseTo(expected, CLOSE);
  }

  /** In the limit only the scatter of the standard deviation is left: that of χ². */
  @ParameterizedTest
  @CsvSource({"1e8, 4, 0.7", "1e15, 4, 1.3", "1e15, 1, 0.2", "1e200, 30, 1", "1e15, 1e6, 1.0002"})
  void noncentralTInTheLimit(double t, double df, double ratio) {
    assertThat(Noncentral.t(t, df, ratio * t))
        .isCloseTo(
            ChiSquaredDistribution.of(df).survivalProbability(df * ratio * ratio), within(1e-7));
    assertThat(Noncentral.t(-t, df, -ratio * t))
        .isCloseTo(
            ChiSquaredDistribution.of(df).cumulativeProbability(df * ratio * ratio), within(1e-7));
  }

  /** {@code pf(f, df1, df2, ncp)}; with ncp 0 the central one. */
  @ParameterizedTest
  @CsvSource({
    "3, 2, 10, 4, 0.5489678907643", "4.6, 1, 9, 7.2, 0.2955672911076",
    "2, 3, 20, 10, 0.1513938759765", "1, 5, 4, 0.5, 0.4472923222155",
    "10, 1, 6, 30, 0.0368186355028", "3.2, 4, 60, 100, 0.0000000001332",
    "5.98, 1, 6, 0, 0.9498974845296"
  })
  void noncentralF(double f, double above, double below, double shift, double expected) {
    assertThat(1 - NoncentralF.beyond(f, above, below, shift)).isCloseTo(expected, CLOSE);
  }

  /** A t squared is an F: the two routines share nothing, and yet agree, far out too. */
  @Test
  void squaresOfTAreF() {
    for (double shift : new double[] {0, 0.3, 2, 7, 25}) {
      for (double df : new double[] {1, 4, 30, 400}) {
        double t = 2 + shift;
        assertThat(NoncentralF.beyond(t * t, 1, df, shift * shift))
            .as("shift %s, df %s", shift, df)
            .isCloseTo(1 - Noncentral.t(t, df, shift) + Noncentral.t(-t, df, shift), CLOSE);
      }
    }
  }

  /** The help of R's {@code power.anova.test}: four groups of 5, between.var 1, within.var 3. */
  @Test
  void analysisOfVariance() {
    double critical = FDistribution.of(3, 16).inverseSurvivalProbability(0.05);
    assertThat(NoncentralF.beyond(critical, 3, 16, 5.0 * 3 * 1 / 3)).isCloseTo(0.3535594238, CLOSE);
  }

  /** {@code power.t.test(n, delta, sd = 1, strict = TRUE)}: rejections on both sides count. */
  @ParameterizedTest
  @CsvSource({
    "3, 0.5, 0.0768490500", "3, 1, 0.1587908700", "3, 2, 0.4626408119", "5, 1.5, 0.5493855978",
    "10, 0.5, 0.1850956563", "10, 1, 0.5620066466", "20, 1, 0.8689530277", "20, 2, 0.9999865749"
  })
  void twoSamples(int n, double delta, double expected) {
    double df = 2.0 * (n - 1);
    double factor = TDistribution.of(df).inverseSurvivalProbability(0.025);
    assertThat(TwoSidedTests.detection(delta, Math.sqrt(2.0 / n), df, factor))
        .isCloseTo(expected, CLOSE);
  }

  /**
   * Two one-sided tests at 5 %: in R, {@code integrate} of the density of s times {@code 2 *
   * pnorm((m - qt(.95, df) * s * se) / se) - 1} up to where that is 0.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.3, 10, 0.8533376817",
    "2, 0.5, 4, 0.8903550554",
    "1, 0.5, 18, 0.2397885295",
    "3, 1, 2, 0.4359710226",
    "1, 0.28, 30, 0.9348660589"
  })
  void equivalence(double margin, double standardError, double df, double expected) {
    assertThat(TwoSidedTests.equivalence(margin, standardError, df, 0.05))
        .isCloseTo(expected, within(1e-7));
  }

  /** {@code pchisq((b - 1) * w^2 * b / (qt(.975, b - 1)^2 * sd^2), b - 1)}, w 10, sd 12. */
  @ParameterizedTest
  @CsvSource({"8, 0.5664266581", "12, 0.9375000361"})
  void widthOfIntervals(int n, double expected) {
    double factor = TDistribution.of(n - 1.0).inverseSurvivalProbability(0.025);
    assertThat(TwoSidedTests.narrowness(10, 12 / Math.sqrt(n), n - 1.0, factor))
        .isCloseTo(expected, CLOSE);
  }
}
