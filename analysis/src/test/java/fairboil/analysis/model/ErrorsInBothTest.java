package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Lines through points uncertain in both coordinates: Pearson's data with York's weights, published
 * results in York et al., American Journal of Physics 72 (2004), table II; further digits and the
 * lines of Deming by R 4.2.2 with the closed formula.
 */
class ErrorsInBothTest {

  private static final double[] X = {0, .9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4};
  private static final double[] Y = {5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5};
  private static final double[] WEIGHT_X = {1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1};
  private static final double[] WEIGHT_Y = {1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500};

  /** Data set cars of R: speed and stopping distance. */
  private static final double[] SPEED = {
    4, 4, 7, 7, 8, 9, 10, 10, 10, 11, 11, 12, 12, 12, 12, 13, 13, 13, 13, 14, 14, 14, 14, 15, 15,
    15, 16, 16, 17, 17, 17, 18, 18, 18, 18, 19, 19, 19, 20, 20, 20, 20, 20, 22, 23, 24, 24, 24, 24,
    25
  };

  private static final double[] DISTANCE = {
    2, 10, 4, 22, 16, 10, 18, 26, 34, 17, 28, 14, 20, 24, 28, 26, 34, 34, 46, 26, 36, 60, 80, 20,
    26, 54, 32, 40, 32, 40, 50, 42, 56, 76, 84, 36, 46, 68, 32, 48, 52, 56, 64, 66, 54, 70, 92, 93,
    120, 85
  };

  @Test
  void pearsonsDataWithYorksWeights() {
    ErrorsInBoth line =
        ErrorsInBoth.york(X, Y, uncertainties(WEIGHT_X), uncertainties(WEIGHT_Y)).orElseThrow();
    assertThat(line.slope()).isCloseTo(-0.480533407446, within(1e-10));
    assertThat(line.intercept()).isCloseTo(5.479910224033, within(1e-10));
    assertThat(line.slopeError()).isCloseTo(0.057985009, within(1e-8));
    assertThat(line.interceptError()).isCloseTo(0.294970735, within(1e-8));
    assertThat(line.sumOfSquares()).isCloseTo(11.8663531941, within(1e-9));
  }

  @Test
  void deming() {
    ErrorsInBoth pearson = ErrorsInBoth.deming(X, Y, 1).orElseThrow();
    assertThat(pearson.slope()).isCloseTo(-0.5455611975, within(1e-9));
    assertThat(pearson.intercept()).isCloseTo(5.7840437745, within(1e-9));
    ErrorsInBoth cars = ErrorsInBoth.deming(SPEED, DISTANCE, 1).orElseThrow();
    assertThat(cars.slope()).isCloseTo(5.953501296, within(1e-8));
    assertThat(cars.intercept()).isCloseTo(-48.703919951, within(1e-7));
    ErrorsInBoth four = ErrorsInBoth.deming(SPEED, DISTANCE, 4).orElseThrow();
    assertThat(four.slope()).isCloseTo(5.721730874, within(1e-8));
    assertThat(four.intercept()).isCloseTo(-45.134655463, within(1e-7));
  }

  @Test
  void pointsThatDetermineNoLineHaveNone() {
    double[] same = {1, 1, 1};
    double[] ones = {1, 1, 1};
    assertThat(ErrorsInBoth.york(same, same, ones, ones)).isEmpty();
    assertThat(ErrorsInBoth.deming(new double[] {1, 2}, new double[] {1, 3}, 1)).isEmpty();
  }

  private static double[] uncertainties(double[] weights) {
    double[] uncertainties = new double[weights.length];
    for (int i = 0; i < weights.length; i++) {
      uncertainties[i] = 1 / Math.sqrt(weights[i]);
    }
    return uncertainties;
  }
}
