package fairboil.analysis.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaturationTest {

  // IAPWS R7-97(2012), table 35.
  @ParameterizedTest
  @CsvSource({"300, 0.353658941E-2", "500, 0.263889776E1", "600, 0.123443146E2"})
  void pressureMatchesVerificationValues(double kelvin, double megapascals) {
    assertThat(Saturation.pressure(kelvin - 273.15))
        .isCloseTo(megapascals * 1e6, withinPercentage(1e-6));
  }

  // IAPWS R7-97(2012), table 36.
  @ParameterizedTest
  @CsvSource({"0.1, 0.372755919E3", "1, 0.453035632E3", "10, 0.584149488E3"})
  void temperatureMatchesVerificationValues(double megapascals, double kelvin) {
    assertThat(Saturation.temperature(megapascals * 1e6) + 273.15).isCloseTo(kelvin, within(1e-6));
  }

  // Computed with Debian's python3-iapws 1.5.3: _TSat_P(p) - 273.15.
  @ParameterizedTest
  @CsvSource({
    "60000, 85.9258",
    "70000, 89.9315",
    "85000, 95.1253",
    "95000, 98.1783",
    "101325, 99.97430",
    "105000, 100.9756"
  })
  void boilingPointAtPressuresOnLand(double pascals, double celsius) {
    assertThat(Saturation.temperature(pascals)).isCloseTo(celsius, within(5e-5));
  }

  // The same library, dT/dp in K/kPa.
  @ParameterizedTest
  @CsvSource({"60, 0.4276", "85, 0.3199", "100, 0.2795"})
  void slopeOfBoilingPoint(double kilopascals, double kelvinPerKilopascal) {
    assertThat(Saturation.temperaturePerPascal(kilopascals * 1e3) * 1e3)
        .isCloseTo(kelvinPerKilopascal, within(1e-4));
  }

  @Property
  void oneUndoesTheOther(@ForAll @DoubleRange(min = 1, max = 370) double celsius) {
    assertThat(Saturation.temperature(Saturation.pressure(celsius)))
        .isCloseTo(celsius, within(1e-6));
  }

  @Test
  void refusesWhatTheFormulationDoesNotCover() {
    assertThatThrownBy(() -> Saturation.pressure(-1)).hasMessageContaining("-1.0 °C");
    assertThatThrownBy(() -> Saturation.temperature(Double.NaN)).hasMessageContaining("NaN Pa");
  }
}
