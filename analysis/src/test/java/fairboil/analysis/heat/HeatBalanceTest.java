package fairboil.analysis.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatBalanceTest {

  private static final double ALUMINIUM_AND_WATER = 4320.55;

  /** Next to no water, so that the heat capacity is the same at all temperatures. */
  private static HeatBalance lumped(double from, double to, double ambient) {
    return HeatBalance.of(
        new Load(1e-12, ALUMINIUM_AND_WATER, from, to), new Surroundings(ambient, 0));
  }

  // The lumped-capacity solution of every text on heat transfer, T = T∞ + (T0 − T∞) exp(−t/τ) with
  // T∞ = Ta + P/UA and τ = C/UA, for C 4320.55 J/K, UA 2 W/K, P 400 W: worked out in Python 3.11.
  @ParameterizedTest
  @CsvSource({
    "15, 95, 10, 1140.7709",
    "20, 95,  0, 1164.38",
    "20, 95, 10, 1084.66",
    "20, 95, 20, 1015.34",
    "20, 95, 30,  954.48"
  })
  void agreesWithTheExponential(double from, double to, double ambient, double seconds) {
    assertThat(lumped(from, to, ambient).seconds(new Fire(400, 0), new Loss(2, 0)).orElseThrow())
        .isCloseTo(seconds, within(0.005));
  }

  // The loss-free limit t = C ΔT / P of the same example.
  @Test
  void withoutLossItIsTheHeatOverThePower() {
    assertThat(lumped(15, 95, 10).seconds(new Fire(400, 0), new Loss(0, 0)).orElseThrow())
        .isCloseTo(864.11, within(0.005));
  }

  // Against Hipparchus's Dormand–Prince 8(5,3) integrator, over time instead of temperature, with
  // the heat capacity of water at each temperature.
  @ParameterizedTest
  @CsvSource({
    "0.3, 100, 10, -20, 600,  3e-4, 1.2, 0",
    "1.0, 190, 15,  20, 550, -3e-4, 1.1, 0",
    "2.0, 400,  5,  35, 900,  5e-4, 2.5, 0",
    "0.8, 190, 15,   5, 600,  2e-4, 1.2, 0.0013",
    "1.0, 150, 20,  30, 500, -2e-4, 1.0, 0.0020"
  })
  void agreesWithAnotherIntegrator(
      double water,
      double pot,
      double from,
      double ambient,
      double power,
      double growth,
      double perKelvin,
      double perPascal) {
    Fire fire = new Fire(power, growth);
    Loss loss = new Loss(perKelvin, perPascal);
    Surroundings air = Surroundings.at(ambient);
    double truth = new Pan(water, pot, loss, air).seconds(fire::at, from, 97.5);

    assertThat(
            HeatBalance.of(new Load(water, pot, from, 97.5), air).seconds(fire, loss).orElseThrow())
        .isCloseTo(truth, within(6e-4 * truth));
  }

  @Test
  void powerIsTheInverseOfTime() {
    HeatBalance balance = HeatBalance.of(new Load(0.8, 190, 12, 98), Surroundings.at(-5));
    Loss loss = new Loss(1.3, 0.001);
    double seconds = balance.seconds(new Fire(523, 2.5e-4), loss).orElseThrow();
    assertThat(balance.power(seconds, 2.5e-4, loss).orElseThrow()).isCloseTo(523, within(1e-5));
  }

  @Test
  void fireThatTheLossOvertakesNeverBringsItThere() {
    HeatBalance cold = HeatBalance.of(new Load(1, 190, 12, 98), Surroundings.at(-20));
    assertThat(cold.seconds(new Fire(150, 0), new Loss(1.3, 0))).isEmpty();
    assertThat(cold.seconds(new Fire(400, -2e-3), new Loss(1.3, 0))).isEmpty();
    assertThat(cold.power(600, -2e-3, new Loss(1.3, 0))).isEmpty();
  }
}
