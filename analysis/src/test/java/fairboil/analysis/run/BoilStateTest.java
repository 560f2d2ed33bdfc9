package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.RunsSheet;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boiled, did not boil, or not seen: what nobody saw is never a failure. */
class BoilStateTest {

  private static final Burn BURN = new Burn(1, 1);
  private static final Burn WEAK = new Burn(0.3, 3);

  private static StudyFixture conditions() {
    return new StudyFixture()
        .cell(RunsSheet.AMBIENT, Burn.AMBIENT, Unit.CELSIUS)
        .cell(RunsSheet.STATION_PRESSURE, 97.8, Unit.KILOPASCAL)
        .cell(RunsSheet.WATER, Burn.WATER, Unit.KILOGRAM)
        .lag(0);
  }

  private static double[] every(int step, int from, int to, double[] values) {
    return IntStream.range(from, to)
        .filter(i -> i % step == 0)
        .mapToDouble(i -> values[i])
        .toArray();
  }

  /** A log of flame and water of a burn, a reading every so many seconds, up to a time. */
  private static StudyFixture logged(Burn burn, int step, int to) {
    return conditions()
        .mark(Event.LIT, 0)
        .times(every(step, 0, to, burn.seconds))
        .channel(Role.FLAME, every(step, 0, to, burn.flame))
        .channel(Role.WATER, every(step, 0, to, burn.water));
  }

  /** A log of water alone, a reading a second. */
  private static StudyFixture water(int seconds, DoubleUnaryOperator celsius) {
    double[] times = IntStream.range(0, seconds).mapToDouble(i -> i).toArray();
    return conditions()
        .times(times)
        .channel(Role.WATER, Arrays.stream(times).map(celsius).toArray());
  }

  private static BoilState state(StudyFixture fixture) {
    return fixture.analyse().state();
  }

  /** It boiled, but a reading every 40 s does not show when. */
  @Test
  void aSlowLoggerIsNoFailure() {
    assertThat(state(logged(BURN, 40, Burn.LENGTH))).isInstanceOf(BoilState.NotSeen.class);
  }

  /** The water was at two thirds of the way, and rising, when the record ended. */
  @Test
  void aRecordThatEndsEarlyIsNoFailure() {
    int early = Burn.POT_ON + (int) ((BURN.boiledAt - Burn.POT_ON) * 2 / 3);
    BoilState state = state(logged(BURN, 1, early));
    assertThat(state).isInstanceOf(BoilState.NotSeen.class);
    assertThat(state.label()).isEqualTo("not seen");
    assertThat(state.outcome()).isEmpty();
  }

  /** Readings that are missing for minutes may have a boil among them. */
  @Test
  void aGapIsNoFailure() {
    Burn gap = new Burn(0.3, 3);
    Arrays.fill(gap.water, 600, 900, Double.NaN);
    assertThat(state(logged(gap, 1, Burn.LENGTH))).isInstanceOf(BoilState.NotSeen.class);
  }

  @Test
  void aFireThatEndsBelowTheBoilIsAFailure() {
    BoilState state = state(logged(WEAK, 1, Burn.LENGTH));
    assertThat(state).isInstanceOf(BoilState.DidNotBoil.class);
    assertThat(((BoilState.DidNotBoil) state).reason().says(BoilSays.FIRE_ENDED)).isTrue();
    // the pot came off while the fire burnt: whether it would have boiled is not known
    assertThat(state(logged(WEAK, 1, Burn.LENGTH).mark(Event.POT_OFF, Burn.FLAME_OUT - 300)))
        .isInstanceOf(BoilState.NotSeen.class);
  }

  @Test
  void waterThatLevelsOffBelowTheBoilIsAFailure() {
    BoilState level = state(water(1500, s -> 15 + Math.min(65, s / 10)));
    assertThat(level).isInstanceOf(BoilState.DidNotBoil.class);
    assertThat(((BoilState.DidNotBoil) level).reason().toString())
        .matches("the water levelled off at (79\\.9|80\\.0)\\d* °C");
    // a probe that hangs beside the pot is level too, but was never heated
    assertThat(state(water(1500, s -> 18 + s / 1500))).isInstanceOf(BoilState.NotSeen.class);
    // taken out of the water on the way
    assertThat(state(water(1500, s -> s < 650 ? 15 + s / 10 : 15)))
        .isInstanceOf(BoilState.NotSeen.class);
    // level within what the sensor is uncertain by of the boiling point
    assertThat(state(water(1500, s -> 15 + Math.min(Burn.BOILING - 16, s / 10))))
        .isNotInstanceOf(BoilState.DidNotBoil.class);
  }

  @ParameterizedTest
  @CsvSource({
    "BOILED, boiled",
    "DID_NOT_BOIL, did not boil",
    "WOULD_NOT_LIGHT, would not light",
    "WENT_OUT, went out",
    "STOPPED, stopped"
  })
  void theWordOfTheOperatorStands(Outcome told, String label) {
    BoilState state = state(conditions().cell(RunsSheet.OUTCOME, told));
    Class<? extends BoilState> expected =
        switch (told) {
          case BOILED -> BoilState.Boiled.class;
          case STOPPED -> BoilState.NotSeen.class;
          default -> BoilState.DidNotBoil.class;
        };
    assertThat(state).isInstanceOf(expected);
    assertThat(state.label()).isEqualTo(label);
    assertThat(state.told()).contains(told);
  }

  @Test
  void aFireMayGoOutAfterTheBoil() {
    RunResult run =
        conditions()
            .cell(RunsSheet.OUTCOME, Outcome.WENT_OUT)
            .mark(Event.LIT, 0)
            .mark(Event.BOIL, 400)
            .analyse();
    assertThat(run.boiled()).isTrue();
    assertThat(run.outcome()).contains(Outcome.BOILED);
  }

  @Test
  void whatWasNotSeenIsAFinding() {
    assertThat(finding(new StudyFixture().analyse()))
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.problem().toString()).startsWith("nothing was seen of this run");
              assertThat(finding.remedy().toString()).contains("A-1.csv");
            });
    assertThat(finding(logged(BURN, 40, Burn.LENGTH).analyse()))
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.WARNING);
              assertThat(finding.problem().toString())
                  .startsWith("whether the water boiled was not seen: ");
            });
    RunResult flameOnly =
        new StudyFixture().times(BURN.seconds).channel(Role.FLAME, BURN.flame).analyse();
    assertThat(finding(flameOnly).severity()).isEqualTo(Severity.NOTE);
    Optional<Finding> excluded =
        seen(new StudyFixture().cell(RunsSheet.EXCLUDE, "pot knocked over").analyse());
    assertThat(excluded).isEmpty();
  }

  private static Finding finding(RunResult run) {
    return seen(run).orElseThrow();
  }

  private static Optional<Finding> seen(RunResult run) {
    return run.findings().stream()
        .filter(finding -> finding.problem().toString().contains("seen"))
        .findFirst();
  }
}
