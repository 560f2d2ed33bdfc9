package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The generator's own physics and geometry: a study is only as good as its truth. */
final class GeneratorTest {

  /** Boiling points by IAPWS-IF97, region 4 (python3-iapws 1.5.3, {@code _TSat_P}). */
  @ParameterizedTest
  @CsvSource({"80, 93.4854", "90, 96.6870", "95, 98.1783", "100, 99.6059", "102, 100.1604"})
  void boilingPointIsNearThatOfTheSteamTables(double kilopascal, double celsius) {
    assertThat(new Air(20, 1000 * kilopascal).boilingPoint()).isCloseTo(celsius, within(0.06));
  }

  /** ISO 2533:1975: 95 460.84 Pa at 500 m. */
  @Test
  void pressureIsNearThatOfTheStandardAtmosphere() {
    assertThat(Air.pressureAt(500, 101_325)).isCloseTo(95_460.84, within(60.0));
  }

  /**
   * A lumped body heated by a steady power: {@code T = Tinf + (T0 - Tinf) exp(-t / tau)} with
   * {@code Tinf = Ta + P / UA} and {@code tau = C / UA} (lumped capacitance, in any text on heat
   * transfer).
   */
  @Test
  void potFollowsTheClosedSolutionOfALumpedBody() {
    Air air = new Air(10, 101_325);
    Burn.Pot pot = new Burn.Pot(1, 15, 0.15, 897, 2, 2, 0);
    Burn.Fire fire = new Burn.Fire(400, 0, 700, 0, 0);
    Burn burn = new Burn(air, pot, fire, new Burn.Times(0, 5, 10, 9000, 9000, 3000));
    double tau = (4186 + 0.15 * 897) / 2;
    double level = 10 + 400 / 2.0;
    double expected = -tau * Math.log((level - air.boilingPoint()) / (level - 15));
    assertThat(Happened.in(burn).boilTime()).isCloseTo(expected, within(0.05));
    assertThat(Happened.in(burn).water().celsius().at(610))
        .isCloseTo(level + (15 - level) * Math.exp(-600 / tau), within(0.01));
  }

  @Test
  void steamTakesWhatHeatIsLeftOver() {
    Air air = new Air(20, 101_325);
    Burn.Pot pot = new Burn.Pot(0.5, 99, 0.2, 897, 1, 1, 0);
    Burn.Fire fire = new Burn.Fire(580, 0, 700, 0, 0);
    Burn burn = new Burn(air, pot, fire, new Burn.Times(0, 5, 10, 9000, 610, 700));
    double heat = 600 * (580 - (air.boilingPoint() - 20));
    double warming = (0.5 * 4186 + 0.2 * 897) * (air.boilingPoint() - 99);
    assertThat(0.5 - PotModel.of(burn).waterLeftKg())
        .isCloseTo((heat - warming) / 2_260_000, within(2e-4));
  }

  @Test
  void wallErrorsHaveTheStatedSizeOnceTheRingIsTurned() {
    List<Spot> errors = Drilling.wall(17, 1.7, Chance.of(1, "wall"));
    assertThat(errors.stream().mapToDouble(Spot::first).sum()).isCloseTo(0, within(1e-12));
    assertThat(rms(errors)).isCloseTo(1.7, within(1e-12));
  }

  @Test
  void noShiftOrTurnMakesBaseErrorsSmaller() {
    List<Spot> places = new ArrayList<>();
    Design.MARROW.baseRings().forEach(ring -> places.addAll(ring.intended()));
    List<Spot> errors = Drilling.base(places, 1.3, Chance.of(1, "base"));
    assertThat(rms(errors)).isCloseTo(1.3, within(1e-12));
    for (double step : new double[] {-0.01, 0.01}) {
      assertThat(rms(moved(places, errors, new Spot(step, 0), 0))).isGreaterThan(1.3);
      assertThat(rms(moved(places, errors, new Spot(0, step), 0))).isGreaterThan(1.3);
      assertThat(rms(moved(places, errors, new Spot(0, 0), step / 10))).isGreaterThan(1.3);
    }
  }

  @Test
  void flickerHasTheStatedSizeAndMemory() {
    Series noise = Chance.of(2, "flicker").noise(200_000, 20, 3);
    double square = 0;
    double next = 0;
    for (int i = 0; i < noise.size() - 1; i++) {
      square += noise.at(i) * noise.at(i);
      next += noise.at(i) * noise.at(i + 1);
    }
    assertThat(Math.sqrt(square / noise.size())).isCloseTo(20, within(0.5));
    assertThat(next / square).isCloseTo(Math.exp(-1 / 3.0), within(0.01));
  }

  @Test
  void neighbouringPurposesDoNotBeginAlike() {
    double sum = 0;
    for (int i = 0; i < 1000; i++) {
      sum += Chance.of(1, "B" + i).between(0, 1);
    }
    assertThat(sum / 1000).isCloseTo(0.5, within(0.04));
    assertThat(Chance.of(1, "B1").between(0, 1))
        .isNotCloseTo(Chance.of(1, "B2").between(0, 1), within(0.01));
  }

  private static double rms(List<Spot> errors) {
    return Math.sqrt(errors.stream().mapToDouble(Spot::square).average().orElseThrow());
  }

  private static List<Spot> moved(
      List<Spot> places, List<Spot> errors, Spot shift, double radians) {
    List<Spot> moved = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      Spot drilled = places.get(i).plus(errors.get(i)).turned(radians).plus(shift);
      moved.add(drilled.plus(places.get(i).times(-1)));
    }
    return moved;
  }
}
