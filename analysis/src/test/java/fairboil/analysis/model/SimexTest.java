package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class SimexTest {

  /**
   * A slope that errors of a quarter of the variance flatten to 1 / (1 + 0.25 (1 + added)): the
   * quadratic through these gives, by R 4.2.2's lm and predict, 0.970629370629.
   */
  @Test
  void goesBackAlongTheCurve() {
    Simex simex = Simex.of(added -> new Simex.Fit(1 / (1 + 0.25 * (1 + added)), 0.04), 2);
    assertThat(simex.estimate()).isCloseTo(0.970629370629, within(1e-10));
    assertThat(simex.standardError()).isCloseTo(0.2, within(1e-10));
  }

  /**
   * Truth by simulation: true slope 2, errors of half the variance of x, which flatten it to 4/3.
   * The quadratic takes most of that back; by the formula above with 0.5 it gives 1.80.
   */
  @Test
  void takesMostOfTheFlatteningBack() {
    RandomGenerator random = new SplittableRandom(41);
    int n = 4000;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      double truth = random.nextGaussian();
      x[i] = truth + Math.sqrt(0.5) * random.nextGaussian();
      y[i] = 2 * truth + 0.3 * random.nextGaussian();
    }
    Simex simex =
        Simex.of(
            added -> {
              double[] more = x.clone();
              for (int i = 0; i < n && added > 0; i++) {
                more[i] += Math.sqrt(0.5 * added) * random.nextGaussian();
              }
              LinearFit fit = LinearFit.of(Regressors.line("x", more), y).orElseThrow();
              return new Simex.Fit(fit.estimate("x"), Math.pow(fit.standardError("x"), 2));
            },
            20);
    assertThat(simex.estimate()).isBetween(1.70, 1.90);
    assertThat(simex.standardError()).isPositive();
  }
}
