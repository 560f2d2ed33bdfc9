package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.normalise.Normalisation;
import fairboil.analysis.normalise.PooledLoss;
import fairboil.analysis.run.References;
import fairboil.analysis.water.Saturation;
import fairboil.ingest.choice.NormaliseBy;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The heat balance of the demonstration beside what its generator knows to be true. */
final class DemoHeatBalanceTest {

  private static StudyRun study;

  @BeforeAll
  static void workOut() throws Exception {
    study = StudyRun.of(Path.of("..", "data-demo"));
  }

  @Test
  void isTheMethodOfTheDemonstration() {
    Normalisation found = study.results().normalisation();
    assertThat(found.lacking()).isEmpty();
    assertThat(found.method()).isEqualTo(NormaliseBy.HEAT_BALANCE);
    assertThat(found.check()).isPresent();
  }

  @Test
  void lossesFoundAreThoseOfThePots() {
    for (PooledLoss pool : study.results().normalisation().losses()) {
      Cookware pot = pool.group().pot().equals("billy") ? Cookware.BILLY : Cookware.CAULDRON;
      double truth = pot.loss(pool.group().beaufort().orElseThrow());
      assertThat(pool.loss().perKelvin())
          .as("%s", pool.group())
          .isCloseTo(truth, within(0.02 * truth));
    }
  }

  @Test
  void normalisedBoilTimesComeBackWithin2PercentAndWithinTheirIntervals() {
    int held = 0;
    int known = 0;
    for (DemoRun run : DemoStudy.runs()) {
      Figure figure = study.run(run.name()).energy().normalisedBoilTime();
      if (figure instanceof Figure.Known it) {
        double truth = truth(run.burn());
        assertThat(it.measured().value()).as(run.name()).isCloseTo(truth, within(0.02 * truth));
        held += it.interval(0.95).contains(truth) ? 1 : 0;
        known++;
      }
    }
    assertThat(known).isGreaterThan(40);
    assertThat((double) held / known).isGreaterThan(0.9);
  }

  /** The same fire and pot under the reference, by the generator. */
  private static double truth(Burn burn) {
    References to = study.results().references();
    Burn.Pot pot = burn.pot();
    Burn reference =
        new Burn(
            new Air(to.ambient(), Saturation.pressure(to.boilingPoint())),
            new Burn.Pot(
                to.water(),
                to.start(),
                pot.emptyKg(),
                pot.specificHeat(),
                pot.loss(),
                pot.lossOnStand(),
                pot.evaporation()),
            burn.fire(),
            burn.times().withEnd(9000, 9000, 3000));
    return PotModel.of(reference).boilAt() - burn.times().potOn();
  }
}
