package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.RunsSheet;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The clocks of a burn of which the truth is known, put apart on purpose. */
class ClockJoiningTest {

  private static final Burn BURN = new Burn(1, 17);
  private static final double BOIL_TIME = BURN.boiledAt - Burn.POT_ON;

  /** The log, begun so long before lighting. */
  private static StudyFixture loggedFrom(int early) {
    Random random = new Random(5);
    double[] seconds = new double[early + Burn.LENGTH];
    double[] flame = new double[seconds.length];
    double[] water = new double[seconds.length];
    for (int i = 0; i < seconds.length; i++) {
      boolean cold = i < early;
      seconds[i] = i;
      flame[i] = cold ? Burn.AMBIENT + 0.5 * random.nextGaussian() : BURN.flame[i - early];
      water[i] = cold ? Burn.START + 0.2 * random.nextGaussian() : BURN.water[i - early];
    }
    return new StudyFixture()
        .cell(RunsSheet.AMBIENT, Burn.AMBIENT, Unit.CELSIUS)
        .cell(RunsSheet.STATION_PRESSURE, 97.8, Unit.KILOPASCAL)
        .lag(0)
        .times(seconds)
        .channel(Role.FLAME, flame)
        .channel(Role.WATER, water);
  }

  private static StudyFixture marked(StudyFixture fixture) {
    return fixture
        .mark(Event.LIT, 0)
        .mark(Event.POT_ON, Burn.POT_ON)
        .mark(Event.BOIL, Math.rint(BURN.boiledAt + 4))
        .mark(Event.FLAME_OUT, Burn.FLAME_OUT);
  }

  private static void assertBoilTimeWithinItsUncertainty(RunResult result) {
    assertThat(result.boil().from()).contains(BoilTimeFrom.LOG);
    double u = result.boil().boilTime().budget().combined();
    assertThat(u).isLessThan(9);
    assertThat(result.boil().boilTime().orNaN()).isCloseTo(BOIL_TIME, within(2 * u));
  }

  private static double joining(Figure figure) {
    return figure.budget().lines().stream()
        .filter(line -> line.influence() == Influence.CLOCK_JOINING)
        .mapToDouble(line -> line.contribution())
        .sum();
  }

  private static Finding aboutClocks(RunResult result) {
    return result.findings().stream()
        .filter(finding -> finding.problem().toString().contains("stopwatch"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void clocksThatGoTogetherAreLeftAlone() {
    RunResult result = marked(loggedFrom(0)).analyse();

    assertThat(result.timeline().at(Event.LIT)).hasValue(0);
    assertThat(result.timeline().at(Event.POT_ON)).hasValue(Burn.POT_ON);
    assertThat(result.findings())
        .noneMatch(each -> each.problem().toString().contains("stopwatch"));
    assertThat(joining(result.boil().boilTime())).isBetween(1.0, 6.0);
    assertBoilTimeWithinItsUncertainty(result);
  }

  @ParameterizedTest
  @ValueSource(ints = {15, 25, 40, 55})
  void aLogBegunBeforeLightingIsJoinedAndSaid(int early) {
    RunResult result = marked(loggedFrom(early)).analyse();

    assertThat(result.timeline().at(Event.LIT).orElseThrow()).isCloseTo(early, within(6.0));
    assertThat(aboutClocks(result).severity()).isEqualTo(Severity.NOTE);
    assertThat(aboutClocks(result).problem().toString())
        .contains("the marks were moved")
        .contains("lit");
    assertBoilTimeWithinItsUncertainty(result);
  }

  @Test
  void beyondAMinuteIsAnErrorThatNamesRunLogAndSize() {
    RunResult result = marked(loggedFrom(150)).analyse();
    Finding finding = aboutClocks(result);

    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.place().file()).isEqualTo("stopwatch.csv");
    assertThat(finding.problem().toString()).contains("run A-1").contains("logs/A-1.csv");
    assertThat(finding.problem().toString())
        .containsPattern("1(4[6-9]|5[0-4])(\\.\\d+)? s after its log begins");
    assertThat(finding.remedy().toString()).contains("lit at");
    assertBoilTimeWithinItsUncertainty(result);
  }

  @Test
  void oneCommonEventJoinsButCannotBeChecked() {
    StudyFixture fixture = loggedFrom(30).mark(Event.LIT, 0).mark(Event.BOIL, 600);
    RunResult result = fixture.analyse();

    assertThat(result.timeline().at(Event.LIT).orElseThrow()).isCloseTo(30, within(5.0));
    assertThat(aboutClocks(result).problem().toString()).contains("cannot be checked");
    assertThat(joining(result.boil().boilTime())).isGreaterThan(5);
  }

  @Test
  void oneCommonEventBeyondAMinuteJoinsNothing() {
    RunResult result = loggedFrom(300).mark(Event.LIT, 0).mark(Event.BOIL, 600).analyse();

    assertThat(aboutClocks(result).severity()).isEqualTo(Severity.ERROR);
    assertThat(result.boil().logBoilTime())
        .asString()
        .contains("the clocks of the stopwatch and the log cannot be matched");
    assertThat(result.boil().from()).contains(BoilTimeFrom.STOPWATCH);
    assertThat(result.boil().boilTime().orNaN()).isEqualTo(600);
  }

  @Test
  void theBoilThatAPersonMarkedNeverMovesTheMarks() {
    StudyFixture late =
        loggedFrom(0)
            .mark(Event.LIT, 0)
            .mark(Event.POT_ON, Burn.POT_ON)
            .mark(Event.BOIL, Math.rint(BURN.boiledAt + 90));
    RunResult result = late.analyse();

    assertThat(result.timeline().at(Event.LIT)).hasValue(0);
    assertThat(result.findings())
        .anyMatch(
            finding -> finding.problem().toString().matches("the boil was marked .* later.*"));
  }

  @Test
  void marksOfAnotherRunAreAnError() {
    RunResult result =
        loggedFrom(0)
            .mark(Event.LIT, 0)
            .mark(Event.BOIL, 700)
            .mark(Event.FLAME_OUT, Burn.FLAME_OUT - 400)
            .analyse();

    assertThat(aboutClocks(result).severity()).isEqualTo(Severity.ERROR);
    assertThat(aboutClocks(result).problem().toString())
        .contains("do not fit together")
        .containsPattern("(399\\.[5-9]|400\\.[0-4])\\d* s later in the log");
    assertThat(result.boil().from()).contains(BoilTimeFrom.STOPWATCH);
  }

  @Test
  void clocksOfTheDayAreJoinedToo() {
    double noon = 12 * 3600;
    int watchAhead = 45;
    RunResult result =
        loggedFrom(20)
            .startingAt(noon)
            .mark(Event.LIT, clock(noon + 20 + watchAhead))
            .mark(Event.POT_ON, clock(noon + 20 + Burn.POT_ON + watchAhead))
            .mark(Event.FLAME_OUT, clock(noon + 20 + Burn.FLAME_OUT + watchAhead))
            .analyse();

    assertThat(result.timeline().at(Event.LIT).orElseThrow()).isCloseTo(20, within(6.0));
    assertThat(aboutClocks(result).problem().toString()).contains("moved").contains("earlier");
    assertBoilTimeWithinItsUncertainty(result);
  }

  private static ClockTime clock(double secondOfDay) {
    return new ClockTime.TimeOfDay(secondOfDay, Optional.empty(), 1);
  }

  @Test
  void nothingInCommonIsSaid() {
    RunResult result =
        new StudyFixture()
            .times(BURN.seconds)
            .channel(Role.WATER, BURN.water)
            .mark(Event.BOIL, 600)
            .analyse();

    assertThat(aboutClocks(result).problem().toString()).contains("no event appears in both");
  }
}
