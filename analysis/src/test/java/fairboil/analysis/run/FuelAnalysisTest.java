package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Feed;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FuelAnalysisTest {

  private static final double FLAME_OUT = 1320;

  /** The hand-worked example of the fuel balance, as sheets tell it; not a published example. */
  private static StudyFixture whole() {
    return new StudyFixture()
        .cell(RunsSheet.AMBIENT, 22, Unit.CELSIUS)
        .cell(RunsSheet.STATION_PRESSURE, 94.39, Unit.KILOPASCAL)
        .cell(RunsSheet.WATER, 5, Unit.KILOGRAM)
        .cell(RunsSheet.WATER_START, 20, Unit.CELSIUS)
        .cell(RunsSheet.WATER_LEFT, 4850, Unit.GRAM)
        .cell(RunsSheet.FUEL, "spruce sticks")
        .cell(RunsSheet.FUEL_LOADED, 410, Unit.GRAM)
        .cell(RunsSheet.FUEL_LEFT, 10, Unit.GRAM)
        .cell(RunsSheet.CHAR_LEFT, 20, Unit.GRAM)
        .cell(RunsSheet.WEIGHED_AT, WeighedAt.POT_OFF)
        .cell(RunsSheet.MOISTURE_WET_BASIS, 10, Unit.PERCENT)
        .cell(RunsSheet.HEATING_VALUE, 18, Unit.MEGAJOULE_PER_KILOGRAM)
        .mark(Event.LIT, 0)
        .mark(Event.BOIL, 900)
        .mark(Event.FLAME_OUT, FLAME_OUT)
        .mark(Event.POT_OFF, FLAME_OUT + 20);
  }

  private static String reason(Figure figure) {
    return ((Figure.Unknown) figure).reason().toString();
  }

  @Test
  void handWorkedExampleThroughTheSheets() {
    FuelResult fuel = whole().analyse().fuel();

    assertThat(fuel.dryFuel().orNaN()).isCloseTo(0.3215, withinPercentage(0.1));
    assertThat(fuel.firepower().orNaN()).isCloseTo(4384, withinPercentage(0.1));
    assertThat(fuel.efficiency().orNaN()).isCloseTo(0.3407, withinPercentage(0.2));
    assertThat(fuel.specificConsumption().orNaN()).isCloseTo(0.06629, withinPercentage(0.1));
    // The reference: 5 kg (the study's median) from 20 °C to 99.974 °C, 4.19 kJ/(kg K).
    assertThat(fuel.fuelPerBoil().orNaN())
        .isCloseTo(5 * 4190 * 79.974 / (0.3407 * 18e6), withinPercentage(0.3));
    assertThat(fuel.efficiency().budget().combined()).isBetween(0.003, 0.02);
    assertThat(fuel.efficiency().budget().shared()).isPositive();
  }

  @Test
  void dryBasisIsTurnedIntoWetBasis() {
    StudyFixture dry = whole().cell(RunsSheet.MOISTURE_DRY_BASIS, 11.11, Unit.PERCENT);

    assertThat(dry.analyse().fuel().dryFuel().orNaN()).isCloseTo(0.3215, withinPercentage(0.1));
    assertThat(dry.analyse().findings())
        .noneMatch(each -> each.problem().toString().contains("moisture"));
    StudyFixture other = whole().cell(RunsSheet.MOISTURE_DRY_BASIS, 10, Unit.PERCENT);
    assertThat(other.analyse().findings())
        .noneMatch(each -> each.problem().toString().contains("moisture"));
    StudyFixture apart = whole().cell(RunsSheet.MOISTURE_DRY_BASIS, 20, Unit.PERCENT);
    assertThat(apart.analyse().findings())
        .anyMatch(each -> each.problem().toString().contains("moisture"));
  }

  @Test
  void heatingValueOfTheRunThenOfTheStudyThenOfTheKind() {
    StudyFixture ofKind = fixtureWithoutHeatingValue();
    StudyFixture ofStudy =
        fixtureWithoutHeatingValue()
            .set(Settings.HEATING_VALUE, Quantity.of(17, Unit.MEGAJOULE_PER_KILOGRAM));
    StudyFixture unknown = fixtureWithoutHeatingValue().cell(RunsSheet.FUEL, "camel dung");

    assertThat(heatPerDryFuel(whole())).isCloseTo(18e6, withinPercentage(1e-6));
    assertThat(heatPerDryFuel(ofStudy)).isCloseTo(17e6, withinPercentage(1e-6));
    assertThat(heatPerDryFuel(ofKind)).isCloseTo(19.1e6, withinPercentage(1e-6));
    assertThat(reason(unknown.analyse().fuel().firepower())).contains("heating value");
  }

  private static StudyFixture fixtureWithoutHeatingValue() {
    return new StudyFixture()
        .cell(RunsSheet.STATION_PRESSURE, 94.39, Unit.KILOPASCAL)
        .cell(RunsSheet.FUEL, "spruce sticks")
        .cell(RunsSheet.FUEL_LOADED, 410, Unit.GRAM)
        .cell(RunsSheet.FUEL_LEFT, 10, Unit.GRAM)
        .cell(RunsSheet.CHAR_LEFT, 20, Unit.GRAM)
        .cell(RunsSheet.MOISTURE_WET_BASIS, 10, Unit.PERCENT)
        .mark(Event.LIT, 0)
        .mark(Event.FLAME_OUT, FLAME_OUT);
  }

  private static double heatPerDryFuel(StudyFixture fixture) {
    FuelResult fuel = fixture.analyse().fuel();
    return fuel.firepower().orNaN() / fuel.burningRate().orNaN();
  }

  @Test
  void ratesRunFromLitToFlameOutOrToWhenTheFuelWasSmothered() {
    FuelResult burntOut = whole().analyse().fuel();
    FuelResult atBoil = whole().cell(RunsSheet.WEIGHED_AT, WeighedAt.BOIL).analyse().fuel();

    assertThat(burntOut.dryFuel().orNaN() / burntOut.burningRate().orNaN())
        .isCloseTo(FLAME_OUT, withinPercentage(1e-6));
    assertThat(atBoil.dryFuel().orNaN() / atBoil.burningRate().orNaN())
        .isCloseTo(900, withinPercentage(1e-6));
  }

  @Test
  void noEfficiencyIfThePotCameOffBeforeTheFuelWasWeighed() {
    FuelResult early = whole().cell(RunsSheet.WEIGHED_AT, WeighedAt.BURNT_OUT).analyse().fuel();
    FuelResult late =
        whole()
            .cell(RunsSheet.WEIGHED_AT, WeighedAt.BURNT_OUT)
            .mark(Event.GLOW_OUT, FLAME_OUT + 10)
            .analyse()
            .fuel();

    assertThat(reason(early.efficiency())).contains("pot came off");
    assertThat(reason(early.fuelPerBoil())).contains("pot came off");
    assertThat(early.firepower().isKnown()).isTrue();
    assertThat(late.efficiency().isKnown()).isTrue();
  }

  @Test
  void aFedFireNeedsItsFuelWeighed() {
    FuelResult fed = whole().cell(RunsSheet.FEED, Feed.FED).analyse().fuel();

    assertThat(reason(fed.dryFuel())).contains("added");
  }

  @Test
  void nothingWeighedIsOneReason() {
    FuelResult none = new StudyFixture().analyse().fuel();

    assertThat(none).isEqualTo(FuelResult.unknown(FuelSays.NOT_WEIGHED.with()));
  }

  static Stream<Arguments> impossible() {
    return Stream.of(
        Arguments.of(RunsSheet.MOISTURE_WET_BASIS, Quantity.of(95, Unit.PERCENT)),
        Arguments.of(RunsSheet.MOISTURE_WET_BASIS, Quantity.of(-3, Unit.PERCENT)),
        Arguments.of(RunsSheet.MOISTURE_DRY_BASIS, Quantity.of(1900, Unit.PERCENT)),
        Arguments.of(RunsSheet.FUEL_LEFT, Quantity.of(500, Unit.GRAM)),
        Arguments.of(RunsSheet.CHAR_LEFT, Quantity.of(450, Unit.GRAM)),
        Arguments.of(RunsSheet.FUEL_LOADED, Quantity.of(-5, Unit.GRAM)),
        Arguments.of(RunsSheet.CHAR_LEFT, Quantity.of(300, Unit.GRAM)),
        Arguments.of(RunsSheet.WATER_LEFT, Quantity.of(5.4, Unit.KILOGRAM)),
        Arguments.of(RunsSheet.FUEL_LOADED, Quantity.of(100, Unit.GRAM)),
        Arguments.of(RunsSheet.HEATING_VALUE, Quantity.of(18, Unit.KILOJOULE_PER_KILOGRAM)));
  }

  @ParameterizedTest
  @MethodSource("impossible")
  void impossiblePhysicsIsAFindingThatNamesTheCellAndNoFigure(
      Column<Quantity> column, Quantity value) {
    RunResult result = whole().cell(column, value).analyse();

    assertThat(result.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.place().column()).contains(column.name());
            });
    assertThat(result.fuel().efficiency().isKnown()).isFalse();
  }

  @Test
  void fedAndBatchBurnsAreNeverPooled() {
    RunResult fed = whole().cell(RunsSheet.FEED, Feed.FED).analyseAmong(Feed.BATCH, Feed.BATCH);
    RunResult batch = whole().cell(RunsSheet.FEED, Feed.BATCH).analyseAmong(Feed.FED);

    assertThat(fed.inclusion().included()).isFalse();
    assertThat(fed.findings()).anyMatch(each -> each.problem().toString().contains("never mixed"));
    assertThat(batch.inclusion().included()).isTrue();
  }
}
