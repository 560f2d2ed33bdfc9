package fairboil.analysis.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceTest {

  // IEC 60584-1:2013, ASTM E230 and IEC 60751; three makers' tables of tolerances agree on these.
  @ParameterizedTest
  @CsvSource({
    "K, CLASS_1, 300, 1.5",
    "K, CLASS_1, 800, 3.2",
    "K, CLASS_2, 100, 2.5",
    "K, CLASS_2, 800, 6.0",
    "N, CLASS_2, 1000, 7.5",
    "J, CLASS_1, 500, 2.0",
    "T, CLASS_1, 50, 0.5",
    "T, CLASS_2, 50, 1.0",
    "K, CLASS_3, -100, 2.5",
    "S, CLASS_1, 1200, 1.3",
    "R, CLASS_2, 1000, 2.5",
    "K, STANDARD, 200, 2.2",
    "K, STANDARD, 800, 6.0",
    "K, SPECIAL, 800, 3.2",
    "E, STANDARD, 100, 1.7",
    "PT100, CLASS_A, 100, 0.35",
    "PT100, CLASS_B, 100, 0.8"
  })
  void halfWidths(SensorType type, ToleranceClass grade, double celsius, double kelvins) {
    assertThat(Tolerance.halfWidth(type, grade, celsius).orElseThrow())
        .isCloseTo(kelvins, within(1e-9));
  }

  @Test
  void classOneTurnsAt375Degrees() {
    assertThat(Tolerance.halfWidth(SensorType.K, ToleranceClass.CLASS_1, 375)).hasValue(1.5);
    assertThat(Tolerance.halfWidth(SensorType.K, ToleranceClass.CLASS_1, 376).orElseThrow())
        .isGreaterThan(1.5);
  }

  @Test
  void noStandardNoTolerance() {
    assertThat(Tolerance.halfWidth(SensorType.PT100, ToleranceClass.CLASS_2, 20)).isEmpty();
  }

  @Test
  void namesAsPeopleWriteThem() {
    assertThat(SensorType.named("type k")).contains(SensorType.K);
    assertThat(SensorType.named("Pt 100")).contains(SensorType.PT100);
    assertThat(SensorType.named("NTC")).isEmpty();
    assertThat(ToleranceClass.named("Class 2")).contains(ToleranceClass.CLASS_2);
    assertThat(ToleranceClass.named("2")).contains(ToleranceClass.CLASS_2);
    assertThat(ToleranceClass.named("special limits of error")).contains(ToleranceClass.SPECIAL);
    assertThat(ToleranceClass.named("B")).contains(ToleranceClass.CLASS_B);
    assertThat(ToleranceClass.named("good")).isEmpty();
  }
}
