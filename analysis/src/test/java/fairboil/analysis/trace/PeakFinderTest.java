package fairboil.analysis.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Against traces whose noise-free form is known, with formulas of the test's own. */
class PeakFinderTest {

  private static final int SECONDS = 900;
  private static final double HOLD = 10;

  /** What a flame does, free of noise, in °C at each second. */
  private enum Flame {
    FLAT {
      @Override
      double[] celsius(Random random) {
        return sample(t -> 760);
      }
    },
    HUMP {
      @Override
      double[] celsius(Random random) {
        double middle = 300 + 300 * random.nextDouble();
        double width = 120 + 200 * random.nextDouble();
        return sample(t -> 600 + 200 * Math.exp(-Math.pow((t - middle) / width, 2)));
      }
    },
    SHARP_HUMP {
      @Override
      double[] celsius(Random random) {
        double middle = 300 + 300 * random.nextDouble();
        return sample(t -> 650 + 120 / (1 + Math.pow((t - middle) / 20, 2)));
      }
    },
    BURN {
      @Override
      double[] celsius(Random random) {
        double end = 700 + 100 * random.nextDouble();
        return sample(
            t ->
                t < end
                    ? 20 + 740 * (1 - Math.exp(-t / 40)) + 25 * Math.sin(t / 90)
                    : 380 - 0.5 * (t - end));
      }
    };

    abstract double[] celsius(Random random);

    private static double[] sample(DoubleUnaryOperator flame) {
      double[] celsius = new double[SECONDS];
      for (int i = 0; i < SECONDS; i++) {
        celsius[i] = flame.applyAsDouble(i);
      }
      return celsius;
    }
  }

  private static double truth(double[] flame) {
    double highest = 0;
    for (int i = 5; i < flame.length - 5; i++) {
      double sum = (flame[i - 5] + flame[i + 5]) / 2;
      for (int k = i - 4; k <= i + 4; k++) {
        sum += flame[k];
      }
      highest = Math.max(highest, sum / HOLD);
    }
    return highest;
  }

  private static double[] noisy(double[] flame, double sd, double memory, Random random) {
    double[] noisy = flame.clone();
    double noise = sd * random.nextGaussian();
    for (int i = 0; i < noisy.length; i++) {
      noisy[i] += noise;
      noise = memory * noise + sd * Math.sqrt(1 - memory * memory) * random.nextGaussian();
    }
    return noisy;
  }

  private static Trace trace(double[] celsius) {
    double[] seconds = new double[celsius.length];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = i;
    }
    return Trace.of(seconds, celsius, 1);
  }

  private static Peak.Held held(double[] celsius) {
    return (Peak.Held) PeakFinder.find(trace(celsius), 0, SECONDS, HOLD);
  }

  private record Errors(double mean, double worst, double beyondTwoU) {

    static Errors of(Flame flame, double memory) {
      Random random = new Random(flame.name().hashCode());
      int runs = 200;
      double sum = 0;
      double worst = 0;
      int beyond = 0;
      for (int run = 0; run < runs; run++) {
        double[] celsius = flame.celsius(random);
        Peak.Held peak = held(noisy(celsius, 3, memory, random));
        double error = peak.celsius() - truth(celsius);
        sum += error;
        worst = Math.max(worst, Math.abs(error));
        beyond += Math.abs(error) > 2 * Math.hypot(peak.noise(), peak.biasUncertainty()) ? 1 : 0;
      }
      return new Errors(sum / runs, worst, beyond / (double) runs);
    }
  }

  @ParameterizedTest
  @EnumSource(Flame.class)
  void noiseOfThreeKelvinsMovesThePeakLittle(Flame flame) {
    Errors errors = Errors.of(flame, 0);

    assertThat(errors.mean()).isCloseTo(0, within(1.5));
    assertThat(errors.worst()).isLessThan(6);
    assertThat(errors.beyondTwoU()).isLessThan(0.1);
  }

  @ParameterizedTest
  @EnumSource(Flame.class)
  void noiseThatLastsSeveralReadingsToo(Flame flame) {
    Errors errors = Errors.of(flame, 0.7);

    assertThat(errors.mean()).isCloseTo(0, within(3.5));
    assertThat(errors.worst()).isLessThan(9);
    assertThat(errors.beyondTwoU()).isLessThan(0.15);
  }

  /**
   * A trace cannot tell flicker from flame: whichever of them a reader means by the peak lies
   * within twice the uncertainty, and the peak of the flame beneath the flicker is the nearer.
   */
  @Test
  void flickerIsNoiseOnTheFlameBeneathIt() {
    Random random = new Random(12);
    int runs = 200;
    double fromBeneath = 0;
    double fromFlickering = 0;
    int missedBeneath = 0;
    int missedFlickering = 0;
    for (int run = 0; run < runs; run++) {
      double[] beneath = Flame.BURN.celsius(random);
      double[] flickering = noisy(beneath, 20, Math.exp(-1 / 4.0), random);
      Peak.Held peak =
          (Peak.Held) PeakFinder.find(trace(noisy(flickering, 1, 0, random)), 60, 690, HOLD);
      double uncertainty = Math.hypot(peak.noise(), peak.biasUncertainty());
      double low = peak.celsius() - truth(beneath);
      double high = peak.celsius() - truth(flickering);
      fromBeneath += low / runs;
      fromFlickering += high / runs;
      missedBeneath += Math.abs(low) > 2 * uncertainty ? 1 : 0;
      missedFlickering += Math.abs(high) > 2 * uncertainty ? 1 : 0;
    }
    assertThat(Math.abs(fromBeneath)).isLessThan(Math.abs(fromFlickering) / 2);
    assertThat(missedBeneath).isLessThan(runs / 10);
    assertThat(missedFlickering).isLessThan(runs / 10);
  }

  @Test
  void withoutNoiseThePeakIsTheHighestAverage() {
    double[] flame = Flame.HUMP.celsius(new Random(4));

    assertThat(held(flame).celsius()).isCloseTo(truth(flame), within(0.1));
  }

  @Test
  void aPeakOfFiveSecondsSurvivesNoise() {
    double[] flame = Flame.FLAT.celsius(new Random(4));
    for (int i = 400; i < 405; i++) {
      flame[i] += 150;
    }

    Peak.Held peak = held(noisy(flame, 3, 0, new Random(5)));

    assertThat(peak.celsius()).isCloseTo(truth(flame), within(4.0));
    assertThat(peak.at()).isCloseTo(402, within(3.0));
  }

  @Test
  void shiftingTheClockMovesOnlyTheTime() {
    double[] celsius = noisy(Flame.HUMP.celsius(new Random(8)), 3, 0, new Random(9));
    double[] seconds = new double[celsius.length];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = i + 1000;
    }

    Peak.Held later =
        (Peak.Held) PeakFinder.find(Trace.of(seconds, celsius, 1), 1000, 1000 + SECONDS, HOLD);

    assertThat(later.at()).isCloseTo(held(celsius).at() + 1000, within(1e-6));
    assertThat(later.celsius()).isCloseTo(held(celsius).celsius(), within(1e-6));
  }

  @Test
  void tooFewReadingsInTheHoldIsNoPeak() {
    double[] seconds = {0, 6, 12, 18, 24, 30, 36};
    Trace sparse = Trace.of(seconds, new double[] {20, 300, 500, 600, 610, 600, 500}, 6);

    assertThat(PeakFinder.find(sparse, 0, 40, HOLD))
        .asString()
        .contains("fewer than 3 readings fall into the 10.0 s", "one every 6.0 s");
  }

  @Test
  void nothingIsJoinedAcrossALongGap() {
    double[] flame = Flame.FLAT.celsius(new Random(4));
    for (int i = 0; i < flame.length; i++) {
      flame[i] = i % 20 < 9 ? 800 : Double.NaN;
    }

    assertThat(PeakFinder.find(trace(flame), 0, SECONDS, HOLD)).isInstanceOf(Peak.None.class);
  }

  @Test
  void noReadingIsNoPeak() {
    assertThat(PeakFinder.find(Trace.empty(), 0, 10, HOLD)).isInstanceOf(Peak.None.class);
    assertThat(PeakFinder.find(trace(new double[] {20}), 0, 10, HOLD))
        .isInstanceOf(Peak.None.class);
  }
}
