package fairboil.analysis.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ThermocoupleTest {

  // NIST Monograph 175 / Standard Reference Database 60, tables of voltage in mV, every 100 °C.
  @ParameterizedTest
  @CsvSource({
    "B, 100, 0.033",
    "B, 200, 0.178",
    "B, 300, 0.431",
    "B, 400, 0.787",
    "B, 500, 1.242",
    "B, 600, 1.792",
    "B, 700, 2.431",
    "B, 800, 3.154",
    "B, 900, 3.957",
    "B, 1000, 4.834",
    "B, 1100, 5.780",
    "B, 1200, 6.786",
    "B, 1300, 7.848",
    "B, 1400, 8.956",
    "B, 1500, 10.099",
    "B, 1600, 11.263",
    "B, 1700, 12.433",
    "B, 1800, 13.591",
    "E, -200, -8.825",
    "E, -100, -5.237",
    "E, 100, 6.319",
    "E, 200, 13.421",
    "E, 300, 21.036",
    "E, 400, 28.946",
    "E, 500, 37.005",
    "E, 600, 45.093",
    "E, 700, 53.112",
    "E, 800, 61.017",
    "E, 900, 68.787",
    "J, -200, -7.890",
    "J, -100, -4.633",
    "J, 100, 5.269",
    "J, 200, 10.779",
    "J, 300, 16.327",
    "J, 400, 21.848",
    "J, 500, 27.393",
    "J, 600, 33.102",
    "J, 700, 39.132",
    "J, 800, 45.494",
    "J, 900, 51.877",
    "J, 1000, 57.953",
    "J, 1100, 63.792",
    "K, -200, -5.891",
    "K, -100, -3.554",
    "K, 100, 4.096",
    "K, 200, 8.138",
    "K, 300, 12.209",
    "K, 400, 16.397",
    "K, 500, 20.644",
    "K, 600, 24.905",
    "K, 700, 29.129",
    "K, 800, 33.275",
    "K, 900, 37.326",
    "K, 1000, 41.276",
    "K, 1100, 45.119",
    "K, 1200, 48.838",
    "K, 1300, 52.410",
    "N, -200, -3.990",
    "N, -100, -2.407",
    "N, 100, 2.774",
    "N, 200, 5.913",
    "N, 300, 9.341",
    "N, 400, 12.974",
    "N, 500, 16.748",
    "N, 600, 20.613",
    "N, 700, 24.527",
    "N, 800, 28.455",
    "N, 900, 32.371",
    "N, 1000, 36.256",
    "N, 1100, 40.087",
    "N, 1200, 43.846",
    "R, 100, 0.647",
    "R, 200, 1.469",
    "R, 300, 2.401",
    "R, 400, 3.408",
    "R, 500, 4.471",
    "R, 600, 5.583",
    "R, 700, 6.743",
    "R, 800, 7.950",
    "R, 900, 9.205",
    "R, 1000, 10.506",
    "R, 1100, 11.850",
    "R, 1200, 13.228",
    "R, 1300, 14.629",
    "R, 1400, 16.040",
    "R, 1500, 17.451",
    "R, 1600, 18.849",
    "R, 1700, 20.222",
    "S, 100, 0.646",
    "S, 200, 1.441",
    "S, 300, 2.323",
    "S, 400, 3.259",
    "S, 500, 4.233",
    "S, 600, 5.239",
    "S, 700, 6.275",
    "S, 800, 7.345",
    "S, 900, 8.449",
    "S, 1000, 9.587",
    "S, 1100, 10.757",
    "S, 1200, 11.951",
    "S, 1300, 13.159",
    "S, 1400, 14.373",
    "S, 1500, 15.582",
    "S, 1600, 16.777",
    "S, 1700, 17.947",
    "T, -200, -5.603",
    "T, -100, -3.379",
    "T, 100, 4.279",
    "T, 200, 9.288",
    "T, 300, 14.862"
  })
  void tableValues(SensorType type, double celsius, double millivolts) {
    assertThat(Thermocouple.of(type).volts(celsius) * 1e3).isCloseTo(millivolts, within(5.01e-4));
  }

  @ParameterizedTest
  @EnumSource(value = SensorType.class, names = "PT100", mode = EnumSource.Mode.EXCLUDE)
  void thereAndBackAgain(SensorType type) {
    Thermocouple thermocouple = Thermocouple.of(type);
    // Type B below about 42 °C gives the voltages of other temperatures again.
    double from = type == SensorType.B ? 60 : Math.max(-200, thermocouple.lowest());
    for (double celsius = from; celsius <= thermocouple.highest(); celsius += 7.3) {
      double volts = thermocouple.volts(celsius);
      assertThat(thermocouple.celsius(volts, 0).orElseThrow()).isCloseTo(celsius, within(0.001));
    }
  }

  // Worked with the same reference functions: type, cold junction, measured mV, hot junction. The
  // cold junction's voltage is added; adding its temperature to 700 °C of type N is off by 8 K.
  @ParameterizedTest
  @CsvSource({
    "K, 25, 28.128731, 700",
    "K, 22.5, 34.414043, 850",
    "N, 25, 23.868006, 700",
    "J, 20, 26.373482, 500"
  })
  void coldJunctionIsAddedAsVoltage(
      SensorType type, double cold, double millivolts, double celsius) {
    assertThat(Thermocouple.of(type).celsius(millivolts * 1e-3, cold).orElseThrow())
        .isCloseTo(celsius, within(0.001));
  }

  // Seebeck coefficients of NIST Monograph 175, µV/K.
  @ParameterizedTest
  @CsvSource({"K, 25, 40.52", "K, 800, 41.00", "N, 25, 26.78", "N, 800, 39.26"})
  void slopes(SensorType type, double celsius, double microvolts) {
    assertThat(Thermocouple.of(type).voltsPerKelvin(celsius) * 1e6)
        .isCloseTo(microvolts, within(0.02));
  }

  @Test
  void voltagesOutOfRangeHaveNoTemperature() {
    assertThat(Thermocouple.of(SensorType.K).celsius(0.1, 20)).isEmpty();
    assertThat(Thermocouple.of(SensorType.K).celsius(0.01, Double.NaN)).isEmpty();
    assertThatThrownBy(() -> Thermocouple.of(SensorType.PT100)).hasMessageContaining("PT100");
    assertThatThrownBy(() -> Thermocouple.of(SensorType.T).volts(500))
        .hasMessageContaining("500.0 °C");
  }
}
