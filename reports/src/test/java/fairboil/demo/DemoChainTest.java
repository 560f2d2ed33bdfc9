package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.run.RunResult;
import fairboil.reports.words.HeatWords;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The chain from readings to a normalised boil time that the page shows of one run, each step
 * worked out again by hand from the sheets of the demonstration or from what its generator did.
 */
final class DemoChainTest {

  /** Heat capacity of water over 15 to 100 °C, J/(kg K): common practice, from memory. */
  private static final double WATER = 4190;

  /**
   * Where water boils at the demonstration's reference, 410 m, by another equation, within 0.1 K.
   */
  private static final double REFERENCE_BOIL =
      new Air(15, Air.pressureAt(410, 101_325)).boilingPoint();

  private static DemoRun burnt;
  private static Map<String, Figure> chain;

  @BeforeAll
  static void workOut() throws Exception {
    RunResult shown =
        HeatWords.example(StudyRun.of(Path.of("..", "data-demo")).results()).orElseThrow();
    String name = shown.run().key().name();
    burnt =
        DemoStudy.runs().stream().filter(run -> run.name().equals(name)).findFirst().orElseThrow();
    chain = HeatWords.chain(shown);
  }

  private static double step(String name) {
    return chain.get(name).orNaN();
  }

  /** Heat to bring water and pot from a temperature to the boil, J. */
  private static double heat(double water, double from, double to) {
    Burn.Pot pot = burnt.burn().pot();
    return (water * WATER + pot.emptyKg() * pot.specificHeat()) * (to - from);
  }

  @Test
  void conditionsAreThoseOfTheSheets() {
    Burn.Pot pot = burnt.burn().pot();
    assertThat(step("air temperature")).isCloseTo(burnt.burn().air().celsius(), within(1.0));
    assertThat(step("water")).isCloseTo(pot.waterKg(), within(0.003));
    assertThat(step("water at the start")).isCloseTo(pot.startCelsius(), within(0.8));
    // The Antoine equation is another than the program's, within 0.1 K.
    assertThat(step("boiling point")).isCloseTo(burnt.burn().air().boilingPoint(), within(0.15));
  }

  @Test
  void theBoilIsThatOfTheBurn() {
    double boil = PotModel.of(burnt.burn()).boilAt() - burnt.burn().times().potOn();
    assertThat(step("boil time")).isCloseTo(boil, within(4.0));
    assertThat(step("plateau less boiling point"))
        .isCloseTo(step("plateau of the water") - step("boiling point"), within(1e-9));
  }

  @Test
  void powerAndEnergyScalingAreSumsThatOneCanDoByHand() {
    double taken = heat(step("water"), step("water at the start"), step("boiling point"));
    assertThat(step("net power")).isCloseTo(taken / step("boil time"), within(3.0));
    // Reference of the demonstration: 0.8 kg from 15 °C.
    double wanted = heat(0.8, 15, REFERENCE_BOIL);
    double scaled = step("boil time") * wanted / taken;
    assertThat(step("boil time restated by energy scaling"))
        .isCloseTo(scaled, within(0.006 * scaled));
  }

  @Test
  void theHeatBalanceTakesOffWhatTheFrostCost() {
    Burn.Pot pot = burnt.burn().pot();
    assertThat(step("heat lost by the pot, from its cooling"))
        .isCloseTo(pot.lossOnStand(), within(0.03 * pot.lossOnStand()));
    assertThat(step("normalised boil time"))
        .isEqualTo(step("boil time restated by heat balance"))
        .isLessThan(step("boil time restated by energy scaling"));
    // Fires of a constant flow: the mean loss is about UA times the mean difference from the air.
    double meanDifference =
        (step("water at the start") + step("boiling point")) / 2 - step("air temperature");
    double given = step("net power") + pot.loss() * meanDifference;
    double mildDifference = (15 + REFERENCE_BOIL) / 2 - 15;
    double mild = heat(0.8, 15, REFERENCE_BOIL) / (given - pot.loss() * mildDifference);
    assertThat(step("normalised boil time")).isCloseTo(mild, within(0.03 * mild));
  }
}
