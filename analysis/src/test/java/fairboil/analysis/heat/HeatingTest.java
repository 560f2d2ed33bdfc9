package fairboil.analysis.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class HeatingTest {

  private static final Contents POT = new Contents(0.8, 190);
  private static final Surroundings AIR = Surroundings.at(5);

  private static double[] heating(Fire fire, Loss loss) {
    double[] course = new Pan(0.8, 190, loss, AIR).course(fire::at, 12, 700);
    return Arrays.stream(course).takeWhile(celsius -> celsius < 97).toArray();
  }

  @Test
  void findsPowerAndGrowthOfTheFire() {
    Fire fire = new Fire(560, 3e-4);
    Loss loss = new Loss(1.2, 0.0013);
    HeatingFit fit =
        Heating.of(CoolingFitTest.blocks(heating(fire, loss)))
            .flatMap(heating -> heating.fit(POT, AIR, loss))
            .orElseThrow();
    assertThat(fit.fire().power()).isCloseTo(560, within(3.0));
    assertThat(fit.fire().growth()).isCloseTo(3e-4, within(2e-5));
  }

  /** Why UA is never had from heating: without it, the fire just seems to grow less. */
  @Test
  void aLossLeftOutLooksLikeADyingFire() {
    Fire fire = new Fire(560, 0);
    BlockMeans part = CoolingFitTest.blocks(heating(fire, new Loss(1.5, 0)));
    HeatingFit fit = Heating.of(part).flatMap(it -> it.fit(POT, AIR, new Loss(0, 0))).orElseThrow();
    assertThat(fit.fire().growth()).isLessThan(-2e-4);
    double scatter = Arrays.stream(fit.residuals()).map(Math::abs).max().orElseThrow();
    assertThat(scatter).isLessThan(0.15);
  }

  @Test
  void uncertaintyOfGrowthHoldsForNoiseThatRemembers() {
    Fire fire = new Fire(560, 2e-4);
    Loss loss = new Loss(1.2, 0);
    double[] truth = heating(fire, loss);
    double exact =
        Heating.of(CoolingFitTest.blocks(truth))
            .flatMap(it -> it.fit(POT, AIR, loss))
            .orElseThrow()
            .fire()
            .growth();
    RandomGenerator random = new SplittableRandom(5);
    int held = 0;
    for (int trial = 0; trial < 400; trial++) {
      BlockMeans part = CoolingFitTest.blocks(CoolingFitTest.withNoise(truth, 0.2, 20, random));
      HeatingFit fit = Heating.of(part).flatMap(it -> it.fit(POT, AIR, loss)).orElseThrow();
      held += Math.abs(fit.fire().growth() - exact) < 2 * fit.growthUncertainty() ? 1 : 0;
    }
    assertThat(held / 400.0).isBetween(0.89, 0.995);
  }

  @Test
  void shortOrSmallHeatingsSayNothing() {
    assertThat(Heating.of(BlockMeans.of(new double[0], new double[0]))).isEmpty();
    double[] brief = Arrays.copyOf(heating(new Fire(560, 0), new Loss(1, 0)), 60);
    assertThat(Heating.of(CoolingFitTest.blocks(brief))).isEmpty();
  }
}
