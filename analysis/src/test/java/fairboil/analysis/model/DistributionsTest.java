package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distributions that no library at hand has, against R 4.2.2, scipy 1.10.1 and printed tables. */
class DistributionsTest {

  /** qtukey(p, k, df). */
  @ParameterizedTest
  @CsvSource({
    "0.95, 2, 5, 3.635352", "0.95, 3, 5, 4.601726", "0.95, 3, 10, 3.876777",
    "0.95, 4, 10, 4.326582", "0.95, 3, 20, 3.577935", "0.95, 5, 20, 4.231857",
    "0.95, 3, 27, 3.506426", "0.95, 6, 66, 4.150851", "0.99, 3, 10, 5.270162",
    "0.99, 3, 20, 4.639220"
  })
  void studentizedRangeQuantiles(double probability, int means, double df, double expected) {
    assertThat(new StudentizedRange(means).inverseCumulativeProbability(probability, df))
        .isCloseTo(expected, within(2e-6));
  }

  /** ptukey(3.5, k, df, lower.tail = FALSE). */
  @Test
  void studentizedRangeProbabilities() {
    assertThat(1 - new StudentizedRange(3).cumulativeProbability(3.5, 20))
        .isCloseTo(0.0558918491, within(1e-9));
    assertThat(1 - new StudentizedRange(4).cumulativeProbability(3.5, 10))
        .isCloseTo(0.1248865614, within(1e-9));
    assertThat(new StudentizedRange(3).inverseCumulativeProbability(0.95, Double.POSITIVE_INFINITY))
        .isCloseTo(3.3145, within(5e-5));
  }

  /** For two means it is √2 times Student's t, at any degrees of freedom. */
  @ParameterizedTest
  @CsvSource({"1", "2", "3", "7.5", "40", "500"})
  void twoMeansAreStudentsT(double df) {
    for (double confidence : new double[] {0.9, 0.95, 0.99}) {
      double t = TDistribution.of(df).inverseCumulativeProbability((1 + confidence) / 2);
      assertThat(new StudentizedRange(2).inverseCumulativeProbability(confidence, df))
          .isCloseTo(Math.sqrt(2) * t, within(1e-6 * t));
      assertThat(new Dunnett(4, new double[] {4}, df).inverseCumulativeProbability(confidence))
          .isCloseTo(t, within(1e-6 * t));
    }
  }

  /** Two-sided 5 % points for equal sizes, as tabled by Dunnett (1964) to two decimals. */
  @ParameterizedTest
  @CsvSource({
    "5, 1, 2.57058", "5, 2, 3.03024", "5, 3, 3.29315", "5, 5, 3.61512",
    "10, 2, 2.56834", "10, 4, 2.89048", "20, 3, 2.54035", "20, 5, 2.73468",
    "60, 2, 2.26527", "60, 5, 2.58250", "27, 2, 2.33341"
  })
  void dunnettQuantiles(double df, int others, double expected) {
    double[] sizes = new double[others];
    Arrays.fill(sizes, 10);
    assertThat(new Dunnett(10, sizes, df).inverseCumulativeProbability(0.95))
        .isCloseTo(expected, within(1.5e-5));
  }

  /** One-sided k: qt(confidence, n - 1, qnorm(share) * sqrt(n)) / sqrt(n) in R. */
  @ParameterizedTest
  @CsvSource({
    "3, 0.90, 6.15528",
    "3, 0.95, 7.65590",
    "3, 0.99, 10.55273",
    "5, 0.90, 3.40663",
    "5, 0.95, 4.20268",
    "5, 0.99, 5.74108",
    "10, 0.95, 2.91096",
    "20, 0.95, 2.39600",
    "30, 0.99, 3.06390",
    "50, 0.95, 2.06499"
  })
  void oneSidedFactors(int n, double share, double expected) {
    assertThat(ToleranceFactor.oneSided(n, share, 0.95)).isCloseTo(expected, within(1e-5));
  }

  /** NIST e-Handbook 7.2.6.3: n = 43, 90 % of the population, 99 % confidence. */
  @Test
  void handbookExample() {
    assertThat(ToleranceFactor.oneSided(43, 0.90, 0.99)).isCloseTo(1.87395, within(1e-5));
    // the handbook's 2.217 is Howe's approximation; 2.2228 is exact
    assertThat(ToleranceFactor.twoSided(43, 0.90, 0.99)).isCloseTo(2.2228, within(5e-5));
  }

  /** Two-sided k as tabled in ISO 16269-6. */
  @ParameterizedTest
  @CsvSource({
    "3, 0.90, 8.3059",
    "3, 0.95, 9.7888",
    "5, 0.95, 5.0769",
    "10, 0.95, 3.3934",
    "20, 0.95, 2.7603",
    "30, 0.99, 3.3546",
    "50, 0.95, 2.3816"
  })
  void twoSidedFactors(int n, double share, double expected) {
    assertThat(ToleranceFactor.twoSided(n, share, 0.95)).isCloseTo(expected, within(5.1e-5));
  }

  @Test
  void lowerEndOfAQuantilesInterval() {
    // symmetric: the 5 % point's upper end is the 95 % point's lower end turned round
    assertThat(ToleranceFactor.oneSided(8, 0.95, 0.025))
        .isCloseTo(-ToleranceFactor.oneSided(8, 0.05, 0.975), within(1e-8));
  }
}
