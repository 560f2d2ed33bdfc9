package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.trace.FlameOut;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.RunsSheet;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A flame probe that is dead, fell out, or is another one. */
class DeadFlameProbeTest {

  private static double[] filled(double value) {
    double[] values = new double[Burn.LENGTH];
    Arrays.fill(values, value);
    return values;
  }

  private static RunResult analysed(double[] flame) {
    Burn burn = new Burn(1, 1);
    return new StudyFixture()
        .cell(RunsSheet.AMBIENT, 20, Unit.CELSIUS)
        .mark(Event.LIT, 0)
        .mark(Event.POT_ON, Burn.POT_ON)
        .times(burn.seconds)
        .channel(Role.FLAME, flame)
        .channel(Role.WATER, burn.water)
        .analyse();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-200, -3, 12, 20, 27})
  void isSaidOnceAndHasNoPeak(double reading) {
    RunResult result = analysed(filled(reading));
    List<Finding> told =
        result.findings().stream()
            .filter(each -> each.problem().toString().contains("never rose clearly above the air"))
            .toList();
    assertThat(told).hasSize(1);
    assertThat(told.get(0).remedy().toString())
        .contains("probe")
        .contains("wiring")
        .contains("role");
    FlameResult flame = result.flame();
    assertThat(List.of(flame.peak(), flame.steadyFlame(), flame.normalisedPeak(), flame.peakRise()))
        .allSatisfy(
            figure ->
                assertThat(((Figure.Unknown) figure).reason().toString())
                    .isEqualTo("its flame probe never rose clearly above the air"));
  }

  @Test
  void theRestOfTheRunStands() {
    RunResult dead = analysed(filled(-3));
    RunResult well = analysed(new Burn(1, 1).flame);
    assertThat(dead.boil().boilTime().isKnown()).isTrue();
    assertThat(dead.boil().boilTime().orNaN()).isEqualTo(well.boil().boilTime().orNaN());
    assertThat(well.flame().peak().isKnown()).isTrue();
    assertThat(well.findings())
        .noneSatisfy(each -> assertThat(each.problem().toString()).contains("never rose"));
  }

  @Test
  void aTraceBelowTheAirHasNoFlameToGoOut() {
    double[] seconds = new double[Burn.LENGTH];
    Arrays.setAll(seconds, i -> i);
    Trace below = Trace.of(seconds, filled(-3), 1);
    assertThat(FlameOut.find(below, 0, 20)).isEmpty();
    assertThat(FlameOut.find(Trace.empty(), 0, 20)).isEmpty();
  }
}
