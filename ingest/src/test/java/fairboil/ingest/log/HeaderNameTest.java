package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.choice.Role;
import fairboil.ingest.quantity.Unit;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Headers as loggers write them; all of our invention. */
class HeaderNameTest {

  private static HeaderName of(String written) {
    return HeaderName.of(written, "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "flame (°C) | CELSIUS",
        "flame [C] | CELSIUS",
        "T (ºC) | CELSIUS",
        "Temp °F | FAHRENHEIT",
        "water °F | FAHRENHEIT",
        "water_F | FAHRENHEIT",
        "flame_temp_C | CELSIUS",
        "TempC | CELSIUS",
        "waterTempF | FAHRENHEIT",
        "T deg C | CELSIUS",
        "T in °C | CELSIUS",
        "Temp, °C (A) | CELSIUS",
        "K-Type, °C (S/N 1) | CELSIUS",
        "Chan 1 (C) | CELSIUS",
        "T1 (Â°C) | CELSIUS",
        "water (DegC) | CELSIUS",
        "water GradC | CELSIUS",
        "flame (*C) | CELSIUS",
        "water [K] | KELVIN",
        "water kelvin | KELVIN",
        "water Fahrenheit | FAHRENHEIT",
        "flame (mV) | MILLIVOLT",
        "flame mV | MILLIVOLT",
        "TC1 (uV) | MICROVOLT",
        "T/°C | CELSIUS"
      })
  void findsTheUnit(String written, Unit unit) {
    assertThat(of(written).unit()).contains(unit);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "flame",
        "Type K",
        "flame type K",
        "flame K",
        "RC",
        "CH",
        "Cal",
        "Chan C",
        "Stove F1",
        "humidity (%)",
        "time (s)",
        "T1",
        "Sensor 1",
        "",
        "#",
        "C"
      })
  void findsNoUnitWhereNoneIsSaid(String written) {
    assertThat(of(written).unit()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "time (s) | SECONDS",
        "t [s] | SECONDS",
        "elapsed_s | SECONDS",
        "time_ms | MILLISECONDS",
        "millis | MILLISECONDS",
        "Seconds | SECONDS",
        "Time (sec) | SECONDS",
        "elapsed min | MINUTES",
        "Time [min] | MINUTES",
        "time (hh:mm:ss) | HOURS_MINUTES_SECONDS",
        "hh:mm:ss | HOURS_MINUTES_SECONDS",
        "Time (µs) | MICROSECONDS"
      })
  void findsHowTimeIsTold(String written, TimeWord word) {
    assertThat(of(written).time()).contains(word);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "flame (°C) | FLAME",
        "Flame temp | FLAME",
        "flameTemp | FLAME",
        "flame1_C | FLAME",
        "Logger 1 flame (°C) | FLAME",
        "water °F | WATER",
        "Twater | WATER",
        "water start | WATER",
        "ambient | AMBIENT",
        "air temp (C) | AMBIENT",
        "T_amb | AMBIENT",
        "outdoor | AMBIENT",
        "cold junction (°C) | COLD_JUNCTION",
        "flame CJ (°C) | COLD_JUNCTION",
        "Tint | COLD_JUNCTION",
        "logger temp (°C) | COLD_JUNCTION"
      })
  void findsTheRole(String written, Role role) {
    assertThat(RoleWords.of(of(written).words())).contains(role);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "T1 (°C)",
        "temp",
        "flame setpoint",
        "flame raw (°C)",
        "air flow",
        "air pressure (hPa)",
        "water level (mm)",
        "flame rate (°C/s)",
        "ambient humidity (%)",
        "primary air (°C)",
        "waterproof probe (°C)",
        "airport (°C)",
        "flame and water"
      })
  void findsNoRoleWhereNoneIsSure(String written) {
    assertThat(RoleWords.of(of(written).words())).isEqualTo(Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"humidity (%)", "pressure [hPa]", "output (%)", "flow (l/min)"})
  void knowsOtherQuantities(String written) {
    assertThat(of(written).other()).isTrue();
    assertThat(of(written).saysTemperature()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"flame, (°C), CELSIUS", "T1, degF, FAHRENHEIT", "water, [K], KELVIN"})
  void takesTheUnitUnderTheName(String written, String below, Unit unit) {
    assertThat(HeaderName.of(written, below).unit()).contains(unit);
  }
}
