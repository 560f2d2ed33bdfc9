package fairboil.analysis.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Events of which the time is known are found in traces of beads and pots that lag. */
class SightingsTest {

  private static final double AIR = 10;
  private static final OptionalDouble NOT_TOLD = OptionalDouble.empty();

  private static Trace trace(double interval, int end, double noise, DoubleUnaryOperator truth) {
    Random random = new Random(11);
    int count = (int) (end / interval);
    double[] seconds = new double[count];
    double[] celsius = new double[count];
    for (int i = 0; i < count; i++) {
      seconds[i] = i * interval;
      celsius[i] = truth.applyAsDouble(seconds[i]) + noise * random.nextGaussian();
    }
    return Trace.of(seconds, celsius, interval);
  }

  /** A flame lit at 40 s and out at 400 s, seen by a bead of the given time constant. */
  private static DoubleUnaryOperator flame(double lag, int out) {
    return t -> {
      double lit = t < 40 ? 0 : 700 * (1 - Math.exp((40 - t) / lag));
      return AIR + (t < out ? lit : 150 + 550 * Math.exp((out - t) / lag));
    };
  }

  @ParameterizedTest
  @CsvSource({"3, 1", "20, 1", "60, 1", "20, 5", "20, 10", "60, 0.25"})
  void lagDoesNotShiftLightingNorFlameOut(double lag, double interval) {
    Trace trace = trace(interval, 1200, 3, flame(lag, 600));
    Sighting lit = Ignition.find(trace, NOT_TOLD).orElseThrow();
    Sighting out = FlameOut.find(trace, 0, AIR).orElseThrow();

    assertThat(lit.seconds()).isCloseTo(40, within(2 * lit.uncertainty()));
    assertThat(out.seconds()).isCloseTo(600, within(2 * out.uncertainty()));
    assertThat(lit.uncertainty()).isLessThan(5);
    assertThat(out.uncertainty()).isLessThan(18);
  }

  @Test
  void aShortBurnBeforeALongGlowEndsWithTheFlame() {
    Sighting out = FlameOut.find(trace(1, 1800, 3, flame(20, 280)), 0, AIR).orElseThrow();

    assertThat(out.seconds()).isCloseTo(280, within(5.0));
  }

  @Test
  void aRecordThatBeginsHotShowsNoLighting() {
    Trace hot = trace(1, 300, 3, t -> 400 + t);
    Trace cold = trace(1, 300, 0.5, t -> AIR + 700 * (1 - Math.exp(-t / 20)));

    assertThat(Ignition.find(hot, OptionalDouble.of(AIR))).isEmpty();
    assertThat(Ignition.find(cold, NOT_TOLD)).isEmpty();
    assertThat(Ignition.find(cold, OptionalDouble.of(AIR)).orElseThrow().seconds())
        .isCloseTo(0, within(1.0));
  }

  @Test
  void waterShowsWhenThePotWasSetOnAndTakenOff() {
    Trace water =
        trace(
            1,
            1500,
            0.15,
            t -> t < 90 ? 12 : t < 780 ? 12 + 0.12 * (t - 90) : t < 1000 ? 94.8 : falling(t));
    Sighting on = WaterLevels.potOn(water, 0).orElseThrow();
    Sighting off = WaterLevels.potOff(water).orElseThrow();

    assertThat(on.seconds()).isCloseTo(90, within(on.uncertainty()));
    assertThat(off.seconds()).isCloseTo(1000, within(off.uncertainty()));
  }

  private static double falling(double t) {
    return AIR + 84.8 * Math.exp((1000 - t) / 3000);
  }

  @Test
  void aProbeDippedIntoWaterShowsThePot() {
    Trace water = trace(1, 400, 0.1, t -> t < 75 ? 21 : 12 + 9 * Math.exp((75 - t) / 4));

    assertThat(WaterLevels.potOn(water, 0).orElseThrow().seconds()).isCloseTo(75, within(3.0));
  }

  @Test
  void waterThatWarmsFromTheFirstReadingOnShowsNothing() {
    assertThat(WaterLevels.potOn(trace(1, 400, 0.1, t -> 12 + 0.12 * t), 0)).isEmpty();
    assertThat(WaterLevels.potOff(trace(1, 400, 0.1, t -> 12 + 0.12 * t))).isEmpty();
  }
}
