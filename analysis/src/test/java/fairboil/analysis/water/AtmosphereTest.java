package fairboil.analysis.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {

  private static final double EARTH_RADIUS = 6_356_766;

  // ISO 2533:1975, pressure at geopotential altitude.
  @ParameterizedTest
  @CsvSource({
    "-400, 106223.43",
    "0, 101325.00",
    "500, 95460.84",
    "1000, 89874.56",
    "2000, 79495.20",
    "3000, 70108.53",
    "5000, 54019.89"
  })
  void pressureAtGeopotentialAltitude(double geopotential, double pascals) {
    double geometric = EARTH_RADIUS * geopotential / (EARTH_RADIUS - geopotential);

    assertThat(Atmosphere.pressure(geometric)).isCloseTo(pascals, within(0.5));
  }

  // The same standard at geometric altitude.
  @ParameterizedTest
  @CsvSource({"1000, 89876.28", "2000, 79501.41", "3000, 70121.14"})
  void pressureAtGeometricAltitude(double metres, double pascals) {
    assertThat(Atmosphere.pressure(metres)).isCloseTo(pascals, within(0.5));
  }

  // Worked with ISO 2533 and IAPWS-IF97 (python3-iapws 1.5.3) for 1,500 m of geopotential.
  @ParameterizedTest
  @CsvSource({"98000, 94.0791", "100000, 94.6258", "101325, 94.9830", "104000, 95.6924"})
  void seaLevelPressureIsReducedToTheAltitude(double seaLevel, double boilingPoint) {
    double geometric = EARTH_RADIUS * 1500.0 / (EARTH_RADIUS - 1500.0);

    assertThat(Saturation.temperature(Atmosphere.reduce(seaLevel, geometric)))
        .isCloseTo(boilingPoint, within(2e-4));
  }

  // Common practice, no source beyond boiling-test protocols: 100 °C less 1 K per 300 m.
  @ParameterizedTest
  @CsvSource({"0", "1000", "2000", "3000"})
  void boilingPointFallsByAboutOneKelvinPer300Metres(double metres) {
    assertThat(Saturation.temperature(Atmosphere.pressure(metres)))
        .isCloseTo(100 - metres / 300, within(0.05));
  }

  @Test
  void slopeIsThatOfThePressure() {
    double difference = Atmosphere.pressure(1001) - Atmosphere.pressure(999);

    assertThat(Atmosphere.pascalsPerMetre(1000)).isCloseTo(difference / 2, within(0.01));
  }

  @Test
  void refusesAltitudesWhereNobodyCooks() {
    assertThatThrownBy(() -> Atmosphere.pressure(12_000)).hasMessageContaining("12000.0 m");
  }
}
