package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.Interval;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Regression against R 4.2.2: lm, predict, hatvalues, cooks.distance, sandwich 3.0-2 vcovHC. */
class LinearFitTest {

  /** Data set cars of R: speed and stopping distance (Ezekiel, 1930). */
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

  private final LinearFit cars =
      LinearFit.of(Regressors.line("speed", SPEED), DISTANCE).orElseThrow();

  @Test
  void coefficientsOfCars() {
    assertThat(cars.estimate("intercept")).isCloseTo(-17.5790948905, within(1e-9));
    assertThat(cars.estimate("speed")).isCloseTo(3.9324087591, within(1e-9));
    assertThat(cars.standardError("intercept")).isCloseTo(6.7584401694, within(1e-9));
    assertThat(cars.standardError("speed")).isCloseTo(0.4155127767, within(1e-9));
    assertThat(cars.residualSd()).isCloseTo(15.3795867488, within(1e-9));
    assertThat(cars.rSquared()).isCloseTo(0.6510793808, within(1e-9));
    // F 89.5671065 on 1 and 48 is t squared; its p is that of the slope
    assertThat(cars.estimate("speed") / cars.standardError("speed"))
        .isCloseTo(Math.sqrt(89.5671065), within(1e-7));
    assertThat(cars.pValue("speed")).isCloseTo(1.489836e-12, within(1e-17));
  }

  /** vif(lm(stack.loss ~ ., stackloss)) of car 3.1-1; the data set is Brownlee's (1965). */
  @Test
  void inflationOfStackloss() {
    double[] air = {
      80, 80, 75, 62, 62, 62, 62, 62, 58, 58, 58, 58, 58, 58, 50, 50, 50, 50, 50, 56, 70
    };
    double[] water = {
      27, 27, 25, 24, 22, 23, 24, 24, 23, 18, 18, 17, 18, 19, 18, 18, 19, 19, 20, 20, 20
    };
    double[] acid = {
      89, 88, 90, 87, 87, 87, 93, 93, 87, 80, 89, 88, 82, 93, 89, 86, 72, 79, 80, 82, 91
    };
    double[] loss = {42, 37, 37, 28, 18, 18, 19, 20, 15, 14, 14, 13, 11, 12, 8, 7, 8, 8, 9, 15, 15};
    LinearFit fit =
        LinearFit.of(Regressors.line("air", air).and("water", water).and("acid", acid), loss)
            .orElseThrow();
    assertThat(fit.varianceInflation("air")).isCloseTo(2.906483627, within(1e-8));
    assertThat(fit.varianceInflation("water")).isCloseTo(2.572632380, within(1e-8));
    assertThat(fit.varianceInflation("acid")).isCloseTo(1.333587462, within(1e-8));
    assertThat(fit.residualSd()).isCloseTo(3.243363918, within(1e-8));
    assertThat(fit.cook(20)).isCloseTo(0.6919999163, within(1e-9));
  }

  /** predict(lm(dist ~ speed, cars), data.frame(speed = c(10, 21)), interval = ...). */
  @Test
  void bandsOfCars() {
    assertThat(cars.fitted(1, 10)).isCloseTo(21.7449927, within(1e-7));
    assertInterval(cars.band(0.95, 1, 10), 15.46191734, 28.02806806, 1e-7);
    assertInterval(cars.prediction(0.95, 1, 10), -9.80960079, 53.29958619, 1e-7);
    assertInterval(cars.band(0.95, 1, 21), 58.59738, 71.40559, 5e-6);
    assertInterval(cars.prediction(0.95, 1, 21), 33.42257, 96.58040, 5e-6);
  }

  /** vcovHC(lm(dist ~ speed, cars), type = "HC3"). */
  @Test
  void robustErrorsOfCars() {
    assertThat(cars.robustStandardError("intercept")).isCloseTo(5.931803319, within(1e-8));
    assertThat(cars.robustStandardError("speed")).isCloseTo(0.4275372192, within(1e-9));
  }

  @Test
  void influenceOfCars() {
    assertThat(cars.cook(48)).isCloseTo(0.34039593361, within(1e-10));
    assertThat(cars.leverage(48)).isCloseTo(0.0739854014, within(1e-10));
    assertThat(cars.cook(22)).isCloseTo(0.08555180809, within(1e-10));
    assertThat(cars.leverage(1)).isCloseTo(0.1148613139, within(1e-10));
    double sum = 0;
    for (int i = 0; i < cars.rows(); i++) {
      sum += cars.leverage(i);
    }
    assertThat(sum).isCloseTo(2, within(1e-12));
  }

  /** Anscombe (1973), fourth set: one point alone decides the slope; R gives a Cook of NaN. */
  @Test
  void aPointOfLeverageOne() {
    double[] x = {8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8};
    double[] y = {6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.50, 5.56, 7.91, 6.89};
    LinearFit fit = LinearFit.of(Regressors.line("x", x), y).orElseThrow();
    assertThat(fit.leverage(7)).isCloseTo(1, within(1e-12));
    assertThat(fit.cook(7)).isInfinite();
    assertThat(fit.robustStandardError("x")).isNaN();
    assertThat(fit.estimate("x")).isCloseTo(0.4999, within(1e-4));
  }

  /** A weight of 2 is a row that stands twice, but for the degrees of freedom. */
  @Test
  void weightsCountRows() {
    double[] x = {1, 2, 4, 7};
    double[] y = {2.0, 2.9, 5.2, 7.7};
    LinearFit weighted =
        LinearFit.of(Regressors.line("x", x), y, new double[] {1, 2, 1, 3}).orElseThrow();
    LinearFit repeated =
        LinearFit.of(
                Regressors.line("x", new double[] {1, 2, 2, 4, 7, 7, 7}),
                new double[] {2.0, 2.9, 2.9, 5.2, 7.7, 7.7, 7.7})
            .orElseThrow();
    assertThat(weighted.estimate("x")).isCloseTo(repeated.estimate("x"), within(1e-13));
    assertThat(weighted.residualSumOfSquares())
        .isCloseTo(repeated.residualSumOfSquares(), within(1e-13));
    assertThat(weighted.degreesOfFreedom()).isEqualTo(2);
    assertThat(weighted.rSquared()).isCloseTo(repeated.rSquared(), within(1e-13));
  }

  @Test
  void aResponseThatTheColumnsDoNotExplainAtAllKeepsItsResiduals() {
    LinearFit fit =
        LinearFit.of(
                Regressors.line("x", new double[] {1, 1, 3, 3}),
                new double[] {-0.5, 0.5, -0.5, 0.5})
            .orElseThrow();
    assertThat(fit.estimate("x")).isCloseTo(0, within(1e-15));
    assertThat(fit.residualSumOfSquares()).isCloseTo(1, within(1e-14));
    assertThat(fit.rSquared()).isCloseTo(0, within(1e-15));
  }

  @Test
  void refusesWhatHasNoAnswer() {
    double[] x = {1, 2, 3, 4};
    double[] twice = Arrays.stream(x).map(value -> 2 * value + 1).toArray();
    double[] y = {1, 3, 2, 5};
    assertThat(LinearFit.of(Regressors.line("x", x).and("twice", twice), y)).isEmpty();
    assertThat(LinearFit.of(Regressors.line("x", new double[] {3, 3, 3, 3}), y)).isEmpty();
    assertThat(LinearFit.of(Regressors.line("x", new double[4]), y)).isEmpty();
    assertThat(LinearFit.of(Regressors.line("x", new double[] {1, 2}), new double[] {1, 2}))
        .isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Regressors.line("x", new double[] {1, Double.NaN}));
  }

  private static void assertInterval(Interval actual, double low, double high, double tolerance) {
    assertThat(actual.low()).isCloseTo(low, within(tolerance));
    assertThat(actual.high()).isCloseTo(high, within(tolerance));
  }
}
