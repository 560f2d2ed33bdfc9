package fairboil.analysis.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the first-order response of a bead as textbooks of heat transfer give it (lumped
 * capacity: {@code τ = ρ c D / 6h}, {@code T = T₁ + (T₀ − T₁) exp(−t/τ)}; gain {@code 1/√(1 +
 * (ωτ)²)} for a sine), with formulas of the test's own.
 */
class LagTest {

  private static final double HOLD = 10;

  /**
   * The bead of a textbook example: D = 1 mm, ρ = 8500 kg/m³, c = 320 J/(kg K), h = 210 W/(m² K).
   */
  private static final double TEXTBOOK_BEAD = 8500 * 320 * 0.001 / (6 * 210);

  private static Trace trace(double seconds, double interval, DoubleUnaryOperator celsius) {
    int count = (int) Math.round(seconds / interval) + 1;
    double[] times = new double[count];
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = i * interval;
      values[i] = celsius.applyAsDouble(times[i]);
    }
    return Trace.of(times, values, interval);
  }

  private static DoubleUnaryOperator step(double at, double from, double to, double lag) {
    return t -> t < at ? from : to + (from - to) * Math.exp(-(t - at) / lag);
  }

  private static DoubleUnaryOperator with(Random noise, double sd, DoubleUnaryOperator celsius) {
    return t -> celsius.applyAsDouble(t) + sd * noise.nextGaussian();
  }

  @Test
  void textbookBeadHasTheTimeConstantOfTheTextbook() {
    // The exponent b printed there is 0.4632 1/s; it shows 63.2 % of a step after τ.
    assertThat(1 / TEXTBOOK_BEAD).isEqualTo(0.4632, within(5e-5));
    assertThat(step(0, 0, 100, TEXTBOOK_BEAD).applyAsDouble(TEXTBOOK_BEAD))
        .isEqualTo(63.2, within(0.05));
  }

  @ParameterizedTest
  @CsvSource({"1, 60.0", "1, 60.3", "1, 60.9", "0.5, 60.2", "2, 60.1"})
  void stepGivesTheTimeConstantWhereverItFellBetweenTwoReadings(double interval, double at) {
    Optional<Lag> lag = Lag.ofStepIn(trace(200, interval, step(at, 20, 100, TEXTBOOK_BEAD)));

    assertThat(lag)
        .hasValueSatisfying(it -> assertThat(it.seconds()).isEqualTo(2.159, within(0.005)));
  }

  @ParameterizedTest
  @CsvSource({"2.16, 20, 98, 0.2", "5, 20, 98, 0.5", "12, 98, 20, 0.5", "30, 640, 25, 3"})
  void stepInNoiseGivesItWithinItsUncertainty(double tau, double from, double to, double sd) {
    int within = 0;
    for (int seed = 0; seed < 40; seed++) {
      Random random = new Random(seed);
      DoubleUnaryOperator probe = step(60 + random.nextDouble(), from, to, tau);
      Lag lag = Lag.ofStepIn(trace(60 + 8 * tau + 60, 1, with(random, sd, probe))).orElseThrow();
      within += Math.abs(lag.seconds() - tau) <= 2 * lag.uncertainty() ? 1 : 0;
      assertThat(lag.uncertainty()).isLessThan(0.12 * tau);
    }
    // 95 % of 40 less three standard deviations of a binomial count.
    assertThat(within).isGreaterThanOrEqualTo(34);
  }

  @Test
  void flickerAndSlowHeatingAreNoStep() {
    Random random = new Random(5);
    DoubleUnaryOperator burn = t -> 20 + 740 * (1 - Math.exp(-t / 40)) + 25 * Math.sin(t / 3);
    assertThat(Lag.ofStepIn(trace(900, 1, with(random, 5, burn)))).isEmpty();
    assertThat(Lag.ofStepIn(trace(900, 1, with(random, 0.2, t -> 15 + t / 9)))).isEmpty();
  }

  @Test
  void probeFasterThanTheLogCannotBeTold() {
    assertThat(Lag.ofStepIn(trace(200, 5, step(61, 20, 100, 1)))).isEmpty();
  }

  @Test
  void undoneLagGivesBackWhatABeadOfFiveSecondsDampensByItsGain() {
    // τ = 5 s and a period of 60 s: gain 0.88591, phase atan(ωτ).
    double omega = 2 * Math.PI / 60;
    double phase = Math.atan(omega * 5);
    Trace bead = trace(600, 1, t -> 700 + 0.88591 * 100 * Math.sin(omega * t - phase));
    double held = Math.sin(omega * HOLD / 2) / (omega * HOLD / 2);

    assertThat(raw(PeakFinder.find(bead, 0, 600, HOLD)))
        .isEqualTo(700 + 0.88591 * 100 * held, within(0.3));
    assertThat(raw(PeakFinder.find(bead, 0, 600, HOLD, 5)))
        .isEqualTo(700 + 100 * held, within(0.3));
  }

  private static double raw(Peak peak) {
    Peak.Held held = (Peak.Held) peak;
    return held.celsius() + held.bias();
  }

  @Test
  void undoneLagOfAPassingHumpComesBackWithinItsUncertainty() {
    double tau = 6;
    int within = 0;
    int runs = 60;
    double lowBy = 0;
    for (int seed = 0; seed < runs; seed++) {
      Random random = new Random(seed);
      double middle = 250 + 300 * random.nextDouble();
      DoubleUnaryOperator gas = t -> 620 + 150 * Math.exp(-Math.pow((t - middle) / 25, 2));
      Trace bead = trace(800, 1, with(random, 1.5, lagging(gas, tau)));
      double truth = heldMaximum(gas);
      Peak.Held undone = (Peak.Held) PeakFinder.find(bead, 0, 800, HOLD, tau);
      Peak.Held shown = (Peak.Held) PeakFinder.find(bead, 0, 800, HOLD);
      lowBy += (truth - shown.celsius()) / runs;
      double u = Math.hypot(undone.noise(), undone.biasUncertainty());
      within += Math.abs(undone.celsius() - truth) <= 2 * u ? 1 : 0;
      assertThat(undone.noise()).isGreaterThan(shown.noise());
    }
    assertThat(lowBy).isGreaterThan(3);
    assertThat(within).isGreaterThanOrEqualTo(52); // 95 % of 60 less three standard deviations
  }

  /** The bead's answer, by small steps of its own equation. */
  private static DoubleUnaryOperator lagging(DoubleUnaryOperator gas, double tau) {
    double small = 0.01;
    double[] bead = new double[80_002];
    bead[0] = gas.applyAsDouble(0);
    for (int i = 1; i < bead.length; i++) {
      bead[i] = bead[i - 1] + small / tau * (gas.applyAsDouble((i - 0.5) * small) - bead[i - 1]);
    }
    return t -> bead[(int) Math.round(t / small)];
  }

  private static double heldMaximum(DoubleUnaryOperator gas) {
    double highest = 0;
    for (double middle = HOLD / 2; middle < 790; middle += 0.5) {
      double sum = 0;
      for (int k = 0; k < 100; k++) {
        sum += gas.applyAsDouble(middle - HOLD / 2 + (k + 0.5) * HOLD / 100);
      }
      highest = Math.max(highest, sum / 100);
    }
    return highest;
  }
}
