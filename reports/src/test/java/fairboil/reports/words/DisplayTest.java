package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {

  private final Display metric = Display.in(DisplayUnits.METRIC);
  private final Display us = Display.in(DisplayUnits.US);

  @ParameterizedTest
  @CsvSource({
    "812.34, 3.2, 812 °C",
    "812.34, 0.4, 812.3 °C",
    "812.34, 0.14, 812.34 °C",
    "812.34, 25, 812 °C",
    "-4.26, 0.3, −4.3 °C",
    "-0.01, 0.3, 0.0 °C",
  })
  void digitsFollowTheUncertainty(double value, double uncertainty, String shown) {
    assertThat(metric.value(value, uncertainty, Dimension.TEMPERATURE)).isEqualTo(shown);
  }

  @Test
  void messagesAreShownInTheUnitsOfTheStudy() {
    Message message =
        HELD.with(
            Argument.value(88.8, 0.2, Dimension.TEMPERATURE),
            Argument.value(30, 2, Dimension.TEMPERATURE_DIFFERENCE),
            Argument.typed(0.0381, 0.0005, Dimension.LENGTH),
            Argument.typed(343, 1, Dimension.DURATION));
    assertThat(Display.in(DisplayUnits.METRIC).say(message))
        .isEqualTo("held 88.8 °C, fell by 30 °C; type 38.1 mm or 5m43s");
    assertThat(Display.in(DisplayUnits.US).say(message))
        .isEqualTo("held 191.8 °F, fell by 54 °F; type 1.50 in or 5m43s");
  }

  private static final Template HELD =
      Template.of("held {value}, fell by {value}; type {typed} or {typed}");

  @Test
  void pressureAndBurningRateHaveUnitsOfTheirOwnInUsUnits() {
    assertThat(Display.in(DisplayUnits.US).value(101325, 100, Dimension.PRESSURE))
        .isEqualTo("29.92 inHg");
    assertThat(Display.in(DisplayUnits.US).value(0.005 / 60, 0.0002 / 60, Dimension.MASS_RATE))
        .isEqualTo("0.176 oz/min");
  }

  @Test
  void differencesOfTemperatureHaveNoOffset() {
    assertThat(us.shown(100, Dimension.TEMPERATURE)).isEqualTo(212, within(1e-9));
    assertThat(us.shown(100, Dimension.TEMPERATURE_DIFFERENCE)).isEqualTo(180, within(1e-9));
  }

  @Test
  void slopesAreReadPerMillimetreOrPerSixteenthOfAnInch() {
    // −9.6 K per mm is −9.6 × 1.8 × 1.5875 °F per 1/16 in
    double slope = -9600;
    assertThat(metric.value(slope, 3000, Dimension.TEMPERATURE_DIFFERENCE_PER_LENGTH))
        .isEqualTo("−10 °C per mm");
    assertThat(us.shown(slope, Dimension.TEMPERATURE_DIFFERENCE_PER_LENGTH))
        .isEqualTo(-27.432, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"343.4, 5:43 min", "59.2, 59 s", "3943, 1:05:43 h", "-75, −1:15 min"})
  void durationsReadAsAStopwatch(double seconds, String shown) {
    assertThat(metric.value(seconds, 2, Dimension.DURATION)).isEqualTo(shown);
  }

  @Test
  void intervalsSayTheirConfidence() {
    assertThat(metric.interval(new Interval(-15.9, -3.3), Dimension.TEMPERATURE_DIFFERENCE, 0.95))
        .isEqualTo("95\u00a0% interval −16 to −3");
    assertThat(metric.value(Measured.of(812, 2, Dimension.TEMPERATURE), 0.95))
        .isEqualTo("812 °C (95\u00a0% interval 808 to 816)");
  }
}
