package fairboil.analysis.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterTest {

  // IAPWS-95 at 0.101325 MPa, computed with Debian's python3-iapws 1.5.3.
  @ParameterizedTest
  @CsvSource({
    "4, 999.9749",
    "10, 999.7025",
    "20, 998.2072",
    "25, 997.0476",
    "40, 992.2164",
    "60, 983.1958",
    "80, 971.7904",
    "90, 965.3096"
  })
  void density(double celsius, double kilogramsPerCubicMetre) {
    assertThat(Water.density(celsius)).isCloseTo(kilogramsPerCubicMetre, withinPercentage(0.002));
  }

  // IAPWS-95 at 0.101325 MPa, the same library, kJ/(kg K).
  @ParameterizedTest
  @CsvSource({
    "4, 4.2075",
    "10, 4.1952",
    "20, 4.1841",
    "30, 4.1798",
    "40, 4.1794",
    "60, 4.1850",
    "80, 4.1968",
    "90, 4.2052"
  })
  void heatCapacityAtOneTemperature(double celsius, double kilojoules) {
    assertThat(Water.heatCapacity(celsius, celsius) / 1e3)
        .isCloseTo(kilojoules, withinPercentage(0.1));
  }

  // The same library: mean of dh/dT.
  @ParameterizedTest
  @CsvSource({"5, 95, 4.18791", "15, 95, 4.18690", "20, 99.85, 4.18852"})
  void meanHeatCapacity(double from, double to, double kilojoules) {
    assertThat(Water.heatCapacity(from, to) / 1e3).isCloseTo(kilojoules, withinPercentage(0.05));
  }

  // IAPWS-IF97 on the saturation line, the same library, kJ/kg.
  @ParameterizedTest
  @CsvSource({
    "4, 2491.43",
    "20, 2453.55",
    "40, 2406.00",
    "60, 2357.69",
    "80, 2308.07",
    "92, 2277.39",
    "100, 2256.47"
  })
  void latentHeat(double celsius, double kilojoules) {
    assertThat(Water.latentHeat(celsius) / 1e3).isCloseTo(kilojoules, withinPercentage(0.05));
  }

  @Test
  void halfALitreAt20Degrees() {
    // CIPM, Metrologia 38 (2001) 301: 998.2067 kg/m³ at 20 °C.
    assertThat(0.5e-3 * Water.density(20)).isCloseTo(0.4991034, within(5e-6));
  }

  @Test
  void refusesIceAndSuperheatedWater() {
    assertThatThrownBy(() -> Water.density(-3)).hasMessageContaining("-3.0 °C");
    assertThatThrownBy(() -> Water.latentHeat(140)).hasMessageContaining("140.0 °C");
  }
}
