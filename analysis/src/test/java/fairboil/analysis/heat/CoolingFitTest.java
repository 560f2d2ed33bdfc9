package fairboil.analysis.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CoolingFitTest {

  private static final Contents POT = new Contents(0.7, 190);

  /** Blocks of 15 s of a course of one reading a second. */
  static BlockMeans blocks(double[] celsius) {
    int count = celsius.length / 15;
    double[] seconds = new double[count];
    double[] means = new double[count];
    for (int i = 0; i < count; i++) {
      seconds[i] = 15 * i + 7;
      means[i] = Arrays.stream(celsius, 15 * i, 15 * i + 15).average().orElseThrow();
    }
    return BlockMeans.of(seconds, means);
  }

  private static double[] cooling(Loss loss, double ambient) {
    return new Pan(POT.water(), POT.pot(), loss, Surroundings.at(ambient))
        .course(time -> 0, 96, 1500);
  }

  @Test
  void findsTheLossUnderALid() {
    BlockMeans part = blocks(cooling(new Loss(1.2, 0), 3));
    CoolingFit fit = CoolingFit.withPerPascal(part, POT, Surroundings.at(3), 0).orElseThrow();
    assertThat(fit.loss().perKelvin()).isCloseTo(1.2, within(0.003));
  }

  @Test
  void findsLossAndSteamOfAnOpenPot() {
    BlockMeans part = blocks(cooling(new Loss(1.2, 0.0013), 10));
    CoolingFit fit = CoolingFit.withSteam(part, POT, Surroundings.at(10)).orElseThrow();
    assertThat(fit.loss().perKelvin()).isCloseTo(1.2, within(0.02));
    assertThat(fit.loss().perPascal()).isCloseTo(0.0013, within(2e-5));
  }

  // Coffee cooling in a room of 17 °C, one reading every 2 minutes: data of a text on computational
  // physics (black coffee). With Ta held and T0 free, least squares on the exponential gives a rate
  // of 0.02409 a minute (R 4.2.2, nls). Integrals by trapezoids weigh readings otherwise: within 3
  // %.
  @Test
  void realCoffeeCoolsAtTheRateOfTheText() {
    double[] celsius = {
      82.3, 78.5, 74.3, 70.7, 67.6, 65.0, 62.5, 60.1, 58.1, 56.1, 54.3, 52.8, 51.2, 49.9, 48.6,
      47.2, 46.1, 45.0, 43.9, 43.0, 41.9, 41.0, 40.1, 39.5
    };
    double[] seconds = IntStream.range(0, celsius.length).mapToDouble(i -> 120.0 * i).toArray();
    Contents cup = new Contents(1, 0);
    CoolingFit fit =
        CoolingFit.withPerPascal(BlockMeans.of(seconds, celsius), cup, new Surroundings(17, 0), 0)
            .orElseThrow();
    double perMinute = 60 * fit.loss().perKelvin() / cup.capacity();
    assertThat(perMinute).isCloseTo(0.02409, within(0.03 * 0.02409));
  }

  // Scatter that lasts: a first-order autoregressive course with a memory of 45 s. Its uncertainty
  // taken as if readings were independent would be 5 times too small.
  @Test
  void uncertaintyHoldsForNoiseThatRemembers() {
    double[] truth = cooling(new Loss(1.2, 0), 3);
    RandomGenerator random = new SplittableRandom(4);
    int held = 0;
    for (int trial = 0; trial < 400; trial++) {
      BlockMeans part = blocks(withNoise(truth, 0.2, 45, random));
      CoolingFit fit = CoolingFit.withPerPascal(part, POT, Surroundings.at(3), 0).orElseThrow();
      double off = Math.abs(fit.loss().perKelvin() - 1.2);
      held += off < 2 * fit.perKelvinUncertainty() ? 1 : 0;
    }
    assertThat(held / 400.0).isBetween(0.90, 0.995);
  }

  /** First-order autoregressive noise. */
  static double[] withNoise(double[] truth, double sd, double memory, RandomGenerator random) {
    double keeps = memory > 0 ? Math.exp(-1 / memory) : 0;
    double[] noisy = truth.clone();
    double noise = sd * random.nextGaussian();
    for (int i = 0; i < noisy.length; i++) {
      noisy[i] += noise;
      noise = keeps * noise + Math.sqrt(1 - keeps * keeps) * sd * random.nextGaussian();
    }
    return noisy;
  }

  @Test
  void shortOrSmallCoolingsSayNothing() {
    double[] course = cooling(new Loss(1.2, 0), 3);
    BlockMeans brief = blocks(Arrays.copyOf(course, 240));
    assertThat(CoolingFit.withPerPascal(brief, POT, Surroundings.at(3), 0)).isEmpty();
    assertThat(CoolingFit.withSteam(brief, POT, Surroundings.at(3))).isEmpty();
  }

  @Test
  void whatFollowsASuddenChangeIsNoLongerThePot() {
    double[] course = cooling(new Loss(1.2, 0), 3);
    Arrays.fill(course, 900, course.length, 20);
    BlockMeans part = blocks(course).untilJump();
    assertThat(part.span()).isBetween(850.0, 900.0);
  }
}
