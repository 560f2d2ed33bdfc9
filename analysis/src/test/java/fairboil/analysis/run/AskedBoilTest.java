package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.RunsSheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A log that shows the boil of a burn whose truth is known, beside marks that are asked about. */
class AskedBoilTest {

  private static final Burn BURN = new Burn(1, 17);
  private static final ClockTime ASKED = new ClockTime.Asked();

  /** A log that sees neither lighting nor flame, so that nothing moves the marks. */
  private static StudyFixture logged(double... seconds) {
    return new StudyFixture()
        .cell(RunsSheet.STATION_PRESSURE, 97.8, Unit.KILOPASCAL)
        .lag(0)
        .times(seconds)
        .channel(Role.WATER, BURN.water);
  }

  private static List<Finding> errors(RunResult result) {
    return result.findings().stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .toList();
  }

  @Test
  void theBoilOfTheLogStandsWhereItsMarkIsAskedAbout() {
    StudyFixture study = logged(BURN.seconds).mark(Event.LIT, 0).mark(Event.POT_ON, Burn.POT_ON);
    BoilResult boil = study.mark(Event.BOIL, ASKED).analyse().boil();

    assertThat(boil.from()).contains(BoilTimeFrom.LOG);
    assertThat(boil.boilTime().orNaN()).isCloseTo(BURN.boiledAt - Burn.POT_ON, within(3.0));
    assertThat(boil.stopwatchBoilTime().toString())
        .contains("the time marked for boil is in doubt");
  }

  @Test
  void theBoilOfTheLogStandsWhereItsMarkComesHoursLate() {
    StudyFixture study = logged(BURN.seconds).mark(Event.LIT, 0).mark(Event.POT_ON, Burn.POT_ON);
    RunResult result = study.mark(Event.BOIL, 8.25 * 3600).analyse();

    assertThat(result.boil().from()).contains(BoilTimeFrom.LOG);
    assertThat(result.boil().stopwatchBoilTime().isKnown()).isFalse();
    assertThat(errors(result))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.place().file()).isEqualTo("stopwatch.csv");
              assertThat(finding.problem().toString()).contains("29610.0 s after pot on");
            });
  }

  @Test
  void noTimeCountsFromLightingWhereTheMarkOfPotOnIsAskedAbout() {
    StudyFixture study = logged(BURN.seconds).mark(Event.LIT, 0).mark(Event.POT_ON, ASKED);
    BoilResult boil = study.mark(Event.BOIL, Math.rint(BURN.boiledAt)).analyse().boil();

    assertThat(boil.boilTime().toString()).contains("the time marked for pot on is in doubt");
    assertThat(boil.logBoilTime().isKnown()).isFalse();
    assertThat(boil.stopwatchBoilTime().isKnown()).isFalse();
  }

  @Test
  void aBoilThatTheLogShowsTooLateIsAskedAbout() {
    double[] slow = BURN.seconds.clone();
    for (int i = 0; i < slow.length; i++) {
      slow[i] *= 8;
    }
    RunResult result = logged(slow).mark(Event.LIT, 0).analyse();

    assertThat(BURN.boiledAt * 8).isGreaterThan(PlausibleBoil.LATEST);
    assertThat(result.boil().from()).isEmpty();
    assertThat(result.boil().boilTime().toString()).contains("but a boil takes 60.0 to 3600.0 s");
    assertThat(errors(result))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.place().file()).isEqualTo("logs/A-1.csv");
              assertThat(finding.problem().toString())
                  .contains("after lit")
                  .contains("is not used");
              assertThat(finding.remedy().toString()).contains("log of run A-1");
            });
  }
}
