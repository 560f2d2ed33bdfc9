package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.ingest.choice.BoilTimeSource;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.StopwatchStart;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RunAnalysisTest {

  private static final Burn BURN = new Burn(1, 17);

  /** Conditions of the burn, without log or marks. */
  private static StudyFixture conditions() {
    return new StudyFixture()
        .cell(RunsSheet.AMBIENT, Burn.AMBIENT, Unit.CELSIUS)
        .cell(RunsSheet.STATION_PRESSURE, 97.8, Unit.KILOPASCAL)
        .cell(RunsSheet.WATER, Burn.WATER, Unit.KILOGRAM)
        .cell(RunsSheet.WATER_START, Burn.START, Unit.CELSIUS)
        .cell(RunsSheet.POT, new PotGiven.Named("billy"))
        .pot("billy", Burn.POT_GRAMS, "aluminium")
        .lag(0);
  }

  private static StudyFixture marked(StudyFixture fixture) {
    return fixture
        .mark(Event.LIT, 0)
        .mark(Event.POT_ON, Burn.POT_ON)
        .mark(Event.BOIL, Math.rint(BURN.boiledAt + 4));
  }

  private static StudyFixture logged(StudyFixture fixture, Burn burn) {
    return fixture
        .times(burn.seconds)
        .channel(Role.FLAME, burn.flame)
        .channel(Role.WATER, burn.water);
  }

  /** A log that sees neither lighting nor flame, so that nothing moves the marks. */
  private static StudyFixture waterOnly(StudyFixture fixture) {
    return fixture.times(BURN.seconds).channel(Role.WATER, BURN.water);
  }

  private static StudyFixture whole() {
    return logged(marked(conditions()), BURN);
  }

  private static String reason(Figure figure) {
    return ((Figure.Unknown) figure).reason().toString();
  }

  private static List<String> problems(RunResult result) {
    return result.findings().stream().map(finding -> finding.problem().toString()).toList();
  }

  private static double trueBoilTime() {
    return BURN.boiledAt - Burn.POT_ON;
  }

  @Test
  void boilTimeIsRightAndStandsOnTheLog() {
    BoilResult boil = whole().analyse().boil();

    assertThat(boil.from()).contains(BoilTimeFrom.LOG);
    assertThat(boil.boilTime().orNaN()).isCloseTo(trueBoilTime(), within(3.0));
    assertThat(boil.stopwatchBoilTime().orNaN()).isCloseTo(trueBoilTime() + 4, within(0.6));
    assertThat(boil.litToBoil().orNaN()).isCloseTo(BURN.boiledAt, within(3.0));
    assertThat(boil.hottestWater().orNaN()).isCloseTo(Burn.BOILING, within(0.3));
  }

  @Test
  void theStopwatchCountsWhereItWasChosen() {
    BoilResult boil =
        whole().set(Settings.BOIL_TIME_FROM, BoilTimeSource.STOPWATCH).analyse().boil();

    assertThat(boil.from()).contains(BoilTimeFrom.STOPWATCH);
    assertThat(boil.boilTime()).isEqualTo(boil.stopwatchBoilTime());
    assertThat(boil.logBoilTime().isKnown()).isTrue();
  }

  @Test
  void flameOutIsSeenWhereNobodyMarkedIt() {
    RunResult result = whole().analyse();

    assertThat(result.timeline().at(Event.FLAME_OUT).orElseThrow())
        .isCloseTo(Burn.FLAME_OUT, within(2.0));
    assertThat(result.boil().burnTime().orNaN()).isCloseTo(Burn.FLAME_OUT, within(2.0));
  }

  @Test
  void flameFiguresAreThoseOfTheBurn() {
    FlameResult flame = whole().analyse().flame();
    double top = Burn.AMBIENT + 700;

    assertThat(flame.peak().orNaN()).isCloseTo(top, within(3.5));
    assertThat(flame.steadyFlame().orNaN()).isCloseTo(top, within(1.0));
    assertThat(flame.peakRise().orNaN()).isCloseTo(700, within(3.5));
    assertThat(flame.normalisedPeak().orNaN())
        .isCloseTo(flame.peak().orNaN() + 20 - Burn.AMBIENT, within(1e-9));
    // IEC 60584-1: type K class 2 is within 0.75 %; rectangular.
    assertThat(flame.peak().budget().shared())
        .isCloseTo(0.0075 * flame.peak().orNaN() / Math.sqrt(3), within(1e-9));
  }

  @Test
  void netPowerAndEnergyScalingByHand() {
    RunResult result = whole().analyse();
    // Mean heat capacity of water 4.187 kJ/(kg K) (IAPWS), of aluminium 0.897 kJ/(kg K) (CRC).
    double capacity = Burn.WATER * 4187 + 0.24 * 897;
    double heat = capacity * (Burn.BOILING - Burn.START);
    double power = heat / result.boil().boilTime().orNaN();
    // The reference: 0.8 kg (the study's median) from 20 °C to 99.974 °C.
    double scaled = capacity * (99.974 - 20) / power;

    assertThat(result.conditions().heatCapacity().orNaN())
        .isCloseTo(capacity, withinPercentage(0.1));
    assertThat(result.energy().netPower().orNaN()).isCloseTo(power, withinPercentage(0.1));
    assertThat(result.energy().energyScaledBoilTime().orNaN())
        .isCloseTo(scaled, withinPercentage(0.1));
    assertThat(result.energy().normalisedBy()).contains(NormaliseBy.ENERGY_SCALING);
    assertThat(result.energy().normalisedBoilTime())
        .isEqualTo(result.energy().energyScaledBoilTime());
  }

  @Test
  void normalisedBoilTimeCarriesItsInputsUncertainty() {
    Figure normalised = whole().analyse().energy().normalisedBoilTime();

    assertThat(normalised.budget().lines())
        .extracting(line -> line.influence())
        .contains(Influence.WATER_MASS, Influence.WATER_START, Influence.BOILING_POINT);
    assertThat(normalised.ifKnown().orElseThrow().standardUncertainty()).isBetween(1.0, 10.0);
  }

  @Test
  void stopwatchAloneGivesABoilTime() {
    RunResult result = marked(conditions()).analyse();

    assertThat(result.outcome()).contains(Outcome.BOILED);
    assertThat(result.boil().from()).contains(BoilTimeFrom.STOPWATCH);
    assertThat(result.boil().boilTime().orNaN()).isCloseTo(trueBoilTime() + 4, within(0.6));
    assertThat(result.boil().boilTime().budget().combined())
        .isCloseTo(Math.sqrt(2 * (1 + 1 / 12.0)), within(1e-9));
    assertThat(reason(result.flame().peak())).isEqualTo("the run has no log");
  }

  @Test
  void theStopwatchWasStartedAtSomething() {
    RunResult lit = conditions().mark(Event.BOIL, 500).analyse();
    RunResult potOn =
        conditions()
            .set(Settings.STOPWATCH_STARTED_AT, StopwatchStart.POT_ON)
            .mark(Event.BOIL, 420)
            .analyse();

    assertThat(lit.boil().boilTime().orNaN()).isEqualTo(500);
    assertThat(lit.boil().litToBoil().orNaN()).isEqualTo(500);
    assertThat(potOn.boil().boilTime().orNaN()).isEqualTo(420);
    assertThat(reason(potOn.boil().litToBoil())).contains("lighting");
  }

  @Test
  void nothingButARowGivesReasons() {
    RunResult result = new StudyFixture().analyse();

    assertThat(result.outcome()).isEmpty();
    assertThat(reason(result.conditions().ambient())).contains("air temperature");
    assertThat(reason(result.conditions().boilingPoint())).contains("altitude");
    assertThat(reason(result.conditions().water())).contains("how much water");
    assertThat(reason(result.boil().boilTime())).contains("no log").contains("nobody marked");
    assertThat(reason(result.energy().normalisedBoilTime())).isNotBlank();
    assertThat(result.sketch().curves()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("oddLogs")
  void oddLogsGiveReasonsToo(double[] celsius) {
    double[] seconds = new double[celsius.length];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = i;
    }
    RunResult result =
        conditions()
            .times(seconds)
            .channel(Role.FLAME, celsius)
            .channel(Role.WATER, celsius)
            .channel(Role.AMBIENT, celsius)
            .analyse();

    assertThat(result.flame().peak()).isInstanceOf(Figure.Unknown.class);
    assertThat(result.boil().boilTime()).isInstanceOf(Figure.Unknown.class);
    assertThat(result.samples()).hasSize(3);
  }

  static Stream<double[]> oddLogs() {
    double[] missing = new double[500];
    Arrays.fill(missing, Double.NaN);
    return Stream.of(new double[0], new double[] {20}, new double[] {20, 21}, missing);
  }

  static Stream<Arguments> impossible() {
    return Stream.of(
        Arguments.of(RunsSheet.WATER, Quantity.of(-500, Unit.GRAM)),
        Arguments.of(RunsSheet.WATER, Quantity.of(800, Unit.KILOGRAM)),
        Arguments.of(RunsSheet.WATER_START, Quantity.of(120, Unit.CELSIUS)),
        Arguments.of(RunsSheet.WATER_START, Quantity.of(-18, Unit.CELSIUS)),
        Arguments.of(RunsSheet.STATION_PRESSURE, Quantity.of(29.9, Unit.PASCAL)),
        Arguments.of(RunsSheet.AMBIENT, Quantity.of(68, Unit.CELSIUS)));
  }

  @ParameterizedTest
  @MethodSource("impossible")
  void impossibleInputIsAFindingThatNamesTheCell(Column<Quantity> column, Quantity value) {
    RunResult result = logged(marked(conditions().cell(column, value)), BURN).analyse();
    Conditions conditions = result.conditions();

    assertThat(result.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.place().column()).contains(column.name());
            });
    assertThat(
            Stream.of(
                conditions.water(),
                conditions.waterStart(),
                conditions.pressure(),
                conditions.ambient()))
        .anyMatch(figure -> !figure.isKnown() && reason(figure).contains("not possible"));
  }

  @Test
  void anAltitudeOfTwelveKilometresIsAFinding() {
    RunResult result = new StudyFixture().cell(RunsSheet.ALTITUDE, 12, Unit.KILOMETRE).analyse();

    assertThat(problems(result)).anyMatch(problem -> problem.contains("altitude"));
    assertThat(result.conditions().boilingPoint().isKnown()).isFalse();
  }

  @Test
  void waterAboveItsBoilingPointIsAFinding() {
    double[] hot = BURN.water.clone();
    for (int i = 0; i < hot.length; i++) {
      hot[i] *= 1.08;
    }
    RunResult result = marked(conditions()).times(BURN.seconds).channel(Role.WATER, hot).analyse();

    assertThat(result.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.problem().toString())
                  .containsPattern("while it boils at (98\\.9[5-9]|99\\.0[0-4])");
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.place().column()).contains("water");
            });
    assertThat(result.boil().hottestWater().isKnown()).isFalse();
    assertThat(result.boil().from()).contains(BoilTimeFrom.STOPWATCH);
  }

  @Test
  void moreWaterLeftThanPutOnIsAFinding() {
    RunResult result = whole().cell(RunsSheet.WATER_LEFT, 0.9, Unit.KILOGRAM).analyse();

    assertThat(problems(result)).anyMatch(problem -> problem.startsWith("more was left than"));
  }

  @Test
  void seaLevelPressureWrittenAsStationPressureIsAFinding() {
    RunResult result =
        conditions()
            .cell(RunsSheet.STATION_PRESSURE, 101.5, Unit.KILOPASCAL)
            .cell(RunsSheet.ALTITUDE, 1600, Unit.METRE)
            .analyse();

    assertThat(problems(result)).anyMatch(problem -> problem.contains("does not fit"));
  }

  @Test
  void altitudeAloneLeavesTheWeatherOpen() {
    RunResult result = new StudyFixture().cell(RunsSheet.ALTITUDE, 1500, Unit.METRE).analyse();
    Figure boilingPoint = result.conditions().boilingPoint();

    // ISO 2533 and IAPWS-IF97: 94.98 °C.
    assertThat(boilingPoint.orNaN()).isCloseTo(94.985, within(0.005));
    assertThat(boilingPoint.budget().combined()).isCloseTo(0.8, within(0.01));
  }

  @Test
  void aVolumeOfWaterIsAMassAtItsTemperature() {
    RunResult result =
        new StudyFixture()
            .cell(RunsSheet.WATER, 1, Unit.LITRE)
            .cell(RunsSheet.WATER_START, 20, Unit.CELSIUS)
            .analyse();

    // IAPWS-95: 998.2072 kg/m³.
    assertThat(result.conditions().water().orNaN()).isCloseTo(0.998207, within(1e-5));
  }

  @Test
  void potAndWaterWeighedTogether() {
    RunResult result = conditions().cell(RunsSheet.POT_WITH_WATER, 1140, Unit.GRAM).analyse();
    RunResult unweighed =
        new StudyFixture().cell(RunsSheet.POT_WITH_WATER, 1140, Unit.GRAM).analyse();

    assertThat(result.conditions().water().orNaN()).isEqualTo(Burn.WATER);
    assertThat(reason(unweighed.conditions().water())).contains("the pot's mass is not given");
  }

  @Test
  void anUnknownPotIsLeftOutAndSaid() {
    RunResult result =
        logged(marked(conditions().cell(RunsSheet.POT, new PotGiven.Named("nobody's"))), BURN)
            .analyse();

    assertThat(problems(result))
        .anyMatch(problem -> problem.contains("the heat that warms the pot is left out"));
    assertThat(result.energy().netPower().isKnown()).isTrue();
  }

  @Test
  void toldAndShownOutcomesAreCompared() {
    Burn weak = new Burn(0.3, 3);
    StudyFixture cold = logged(conditions().mark(Event.LIT, 0), weak);

    RunResult told = whole().cell(RunsSheet.OUTCOME, Outcome.DID_NOT_BOIL).analyse();
    RunResult boiled = cold.cell(RunsSheet.OUTCOME, Outcome.BOILED).analyse();

    assertThat(problems(told))
        .anyMatch(problem -> problem.contains("runs.csv says “did not boil”"));
    assertThat(reason(told.boil().boilTime())).isEqualTo("the run did not boil");
    assertThat(problems(boiled))
        .anyMatch(problem -> problem.contains("runs.csv says that the run boiled"));
  }

  @Test
  void notBoilingIsAResult() {
    Burn weak = new Burn(0.3, 3);
    RunResult result = logged(conditions().mark(Event.LIT, 0), weak).analyse();

    assertThat(result.outcome()).contains(Outcome.DID_NOT_BOIL);
    assertThat(result.boil().hottestWater().orNaN())
        .isCloseTo(Arrays.stream(weak.water).max().orElseThrow(), within(1.0));
  }

  @Test
  void logAndStopwatchThatDisagreeAreAFinding() {
    RunResult result =
        logged(
                conditions()
                    .mark(Event.LIT, 0)
                    .mark(Event.POT_ON, Burn.POT_ON)
                    .mark(Event.BOIL, Math.rint(BURN.boiledAt) - 60),
                BURN)
            .analyse();

    assertThat(problems(result))
        .anyMatch(
            problem -> problem.matches("the boil was marked (59|6\\d)(\\.\\d+)? s earlier.*"));
  }

  @Test
  void aBoilBeforeTheStartIsAFinding() {
    RunResult result = conditions().mark(Event.POT_ON, 300).mark(Event.BOIL, 60).analyse();

    assertThat(problems(result)).contains("the boil is marked before pot on");
    assertThat(result.boil().boilTime().isKnown()).isFalse();
  }

  @Test
  void timesOfDayJoinLogAndMarks() {
    double noon = 12 * 3600;
    RunResult result =
        logged(
                conditions()
                    .startingAt(noon)
                    .mark(Event.LIT, clock(noon + 20, 1))
                    .mark(Event.POT_ON, clock(noon + Burn.POT_ON, 1))
                    .mark(Event.BOIL, clock(noon + Math.rint(BURN.boiledAt), 1)),
                BURN)
            .analyse();

    assertThat(result.timeline().at(Event.LIT)).hasValue(20);
    assertThat(result.boil().logBoilTime().orNaN()).isCloseTo(trueBoilTime(), within(3.0));
    assertThat(result.boil().stopwatchBoilTime().orNaN()).isCloseTo(trueBoilTime(), within(1.0));
  }

  @Test
  void litAtSetsTheStopwatchByTheClockOfTheLog() {
    double clock = 9 * 3600 + 100;
    StudyFixture fixture =
        waterOnly(conditions().startingAt(clock).mark(Event.BOIL, 400))
            .cell(RunsSheet.LIT_AT, clock(clock + 30, 1));

    assertThat(fixture.analyse().timeline().at(Event.LIT)).hasValue(30);
    assertThat(fixture.analyse().timeline().at(Event.BOIL)).hasValue(430);
  }

  @Test
  void aMinuteInWhichTheLogBeganDoesNotSetTheStopwatch() {
    double clock = 9 * 3600 + 100;
    StudyFixture near =
        waterOnly(conditions().startingAt(clock).mark(Event.BOIL, 400))
            .cell(RunsSheet.LIT_AT, clock(9 * 3600 + 60, 60));
    StudyFixture far =
        waterOnly(conditions().startingAt(clock).mark(Event.BOIL, 400))
            .cell(RunsSheet.LIT_AT, clock(9 * 3600 + 240, 60));

    assertThat(near.analyse().timeline().at(Event.BOIL)).hasValue(400);
    assertThat(far.analyse().timeline().at(Event.BOIL)).hasValue(540);
  }

  @Test
  void acrossMidnight() {
    double beforeMidnight = 24 * 3600 - 60;
    RunResult result =
        logged(conditions().startingAt(beforeMidnight).mark(Event.POT_ON, clock(30, 1)), BURN)
            .analyse();

    assertThat(result.timeline().at(Event.POT_ON)).hasValue(90);
  }

  @Test
  void excludedRunsAreWorkedOutAllTheSame() {
    RunResult result = whole().cell(RunsSheet.EXCLUDE_BOIL, "lid forgotten").analyse();

    assertThat(result.inclusion())
        .isEqualTo(
            new Inclusion(
                Optional.empty(),
                Optional.empty(),
                Optional.of(Inclusion.asWritten("lid forgotten"))));
    assertThat(result.boil().boilTime().isKnown()).isTrue();
  }

  @Test
  void farRestatingIsAFinding() {
    RunResult result =
        whole().set(Settings.REFERENCE_WATER, Quantity.of(2, Unit.KILOGRAM)).analyse();

    assertThat(problems(result)).anyMatch(problem -> problem.contains("2.50 times"));
  }

  @Test
  void sameInputSameResult() {
    assertThat(whole().analyse().boil()).isEqualTo(whole().analyse().boil());
    assertThat(whole().analyse().flame()).isEqualTo(whole().analyse().flame());
  }

  @Test
  void voltagesNeedATypeAndAColdJunction() {
    RunResult result =
        conditions()
            .times(0, 1, 2)
            .channel(Role.FLAME, Unit.MILLIVOLT, 0.020, 0.021, 0.021)
            .analyse();

    assertThat(problems(result)).anyMatch(problem -> problem.contains("type of its thermocouple"));
    assertThat(reason(result.flame().peak())).contains("no flame column");
  }

  private static ClockTime clock(double secondOfDay, double resolution) {
    return new ClockTime.TimeOfDay(secondOfDay, Optional.empty(), resolution);
  }
}
