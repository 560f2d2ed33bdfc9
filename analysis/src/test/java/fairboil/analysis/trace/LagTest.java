package fairboil.analysis.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the closed solutions of the equation of first order, {@code τ dT/dt = T₀ − T}: the answer
 * to a step is {@code 1 − exp(−t/τ)}, to a ramp of slope r it runs r τ behind, and to a sine of
 * angular frequency ω it is smaller by {@code 1/√(1 + ω²τ²)}.
 */
class LagTest {

  private static Trace trace(double interval, int size, DoubleUnaryOperator celsius) {
    double[] seconds = new double[size];
    double[] values = new double[size];
    for (int i = 0; i < size; i++) {
      seconds[i] = i * interval;
      values[i] = celsius.applyAsDouble(seconds[i]);
    }
    return Trace.of(seconds, values, interval);
  }

  private static DoubleUnaryOperator step(double at, double from, double to, double tau) {
    return t -> t < at ? from : to + (from - to) * Math.exp(-(t - at) / tau);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 3", "1, 6", "1, 20", "2, 8"})
  void aStepComesBackFromItsAnswer(double interval, double tau) {
    Trace undone = LagUndoing.undo(trace(interval, 200, step(50, 20, 700, tau)), tau);
    for (int i = 0; i < undone.size(); i++) {
      double from = undone.secondsAt(i) - 50;
      boolean amid = undone.secondsAt(i) < 199 * interval - Math.max(tau / 2, 2 * interval);
      if (amid && Math.abs(from) > Math.max(tau / 2, 2 * interval) + interval) {
        double left = 680 * Math.exp(-Math.max(0, from) / tau);
        double allowed = from < 0 ? 1e-9 : 0.13 * left + 1e-6;
        assertThat(undone.celsiusAt(i)).isCloseTo(from < 0 ? 20 : 700, within(allowed));
      }
    }
  }

  @Test
  void aRampComesBackExactly() {
    double tau = 7;
    Trace undone = LagUndoing.undo(trace(1, 100, t -> 30 + 2 * (t - tau)), tau);
    for (int i = 0; i < 100; i++) {
      assertThat(undone.celsiusAt(i)).isCloseTo(30 + 2.0 * i, within(1e-9));
    }
  }

  /** A swing of one minute, of which a probe of 10 s shows 69 %: all but 2 % comes back. */
  @Test
  void aSineComesBackToItsHeight() {
    double omega = 2 * Math.PI / 60;
    double tau = 10;
    double shown = 1 / Math.hypot(1, omega * tau);
    double behind = Math.atan(omega * tau);
    Trace read = trace(1, 300, t -> 600 + 50 * shown * Math.sin(omega * t - behind));
    Trace undone = LagUndoing.undo(read, tau);
    for (int i = 20; i < 280; i++) {
      assertThat(undone.celsiusAt(i)).isCloseTo(600 + 50 * Math.sin(omega * i), within(2.0));
    }
  }

  @Test
  void noGapIsBridged() {
    double[] seconds = {0, 1, 2, 3, 4, 60, 61, 62, 63, 64};
    double[] celsius = {20, 20, 20, 20, 20, 300, 300, 300, 300, 300};
    Trace undone = LagUndoing.undo(Trace.of(seconds, celsius, 1), 5);
    for (int i = 0; i < 10; i++) {
      assertThat(undone.celsiusAt(i)).isCloseTo(celsius[i], within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 4, 20, 650", "1, 12, 700, 25", "0.5, 2.5, 18, 96", "2, 25, 15, 95"})
  void theTimeConstantComesBackFromAStep(double interval, double tau, double from, double to) {
    Trace read = trace(interval, 400, step(60.3, from, to, tau));
    StepResponse found = StepResponse.quickest(read).orElseThrow();
    assertThat(found.timeConstant()).isCloseTo(tau, within(0.005 * tau));
    assertThat(found.at()).isCloseTo(60.3, within(0.02 * tau + 0.05));
    assertThat(found.height()).isCloseTo(to - from, within(0.01 * Math.abs(to - from)));
  }

  /** Of 200, the share within twice the stated uncertainty: 95 % less 2.6 standard deviations. */
  @Test
  void itsUncertaintyIsWhatNoiseMakes() {
    RandomGenerator random = new SplittableRandom(71);
    int held = 0;
    for (int i = 0; i < 200; i++) {
      double tau = 3 + 12 * random.nextDouble();
      double at = 60 + random.nextDouble();
      DoubleUnaryOperator truth = step(at, 20, 95, tau);
      Trace read = trace(1, 240, t -> truth.applyAsDouble(t) + 0.4 * random.nextGaussian());
      StepResponse found = StepResponse.quickest(read).orElseThrow();
      held += Math.abs(found.timeConstant() - tau) <= 2 * found.uncertainty() ? 1 : 0;
    }
    assertThat(held / 200.0).isGreaterThan(0.91);
  }

  /**
   * A fire that takes 30 s to burn up is not taken for a probe of 30 s if a quicker step is there.
   */
  @Test
  void theQuickestStepCounts() {
    DoubleUnaryOperator fire = step(100, 20, 700, 30);
    DoubleUnaryOperator out = step(500, 700, 30, 5);
    Trace read = trace(1, 700, t -> t < 500 ? fire.applyAsDouble(t) : out.applyAsDouble(t));
    assertThat(StepResponse.quickest(read).orElseThrow().timeConstant()).isCloseTo(5, within(0.05));
  }

  @Test
  void noStepIsSeenInAKettleOrInNoise() {
    RandomGenerator random = new SplittableRandom(72);
    Trace kettle = trace(1, 900, t -> Math.min(98, 15 + 0.15 * t) + 0.2 * random.nextGaussian());
    Trace noise = trace(1, 900, t -> 600 + 20 * random.nextGaussian());
    assertThat(StepResponse.quickest(kettle)).isEmpty();
    assertThat(StepResponse.quickest(noise)).isEmpty();
  }

  /** It begins gently: no step, though its later part looks like the answer of a slow probe. */
  @Test
  void fireThatGrowsWhileItsProbeLagsIsNoStep() {
    RandomGenerator random = new SplittableRandom(73);
    DoubleUnaryOperator lagging =
        t -> {
          double since = Math.max(0, t - 60);
          double both = (40 * Math.exp(-since / 40) - 8 * Math.exp(-since / 8)) / 32;
          double swell = 100 * Math.exp(-Math.pow((t - 500) / 25, 2));
          return 20 + 620 * (1 - both) + swell + random.nextGaussian();
        };
    assertThat(StepResponse.quickest(trace(1, 900, lagging))).isEmpty();
  }

  @Test
  void probeFasterThanTheLogCannotBeTold() {
    assertThat(StepResponse.quickest(trace(5, 60, step(61, 20, 100, 1)))).isEmpty();
  }
}
