package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.analysis.run.RunResult;
import fairboil.demo.DemoRun.Fate;
import fairboil.ingest.choice.Outcome;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demonstration shows what it was made to show. */
final class DemoStudyEndToEndTest {

  private static final List<DemoRun> TRUTH = DemoStudy.runs();

  private static StudyRun study;

  @BeforeAll
  static void workOut() throws Exception {
    study = StudyRun.of(Path.of("..", "data-demo"));
  }

  @Test
  void oneClaimOfEachKind() {
    Map<String, Verdict> verdicts =
        study.results().claims().stream()
            .collect(Collectors.toMap(claim -> claim.claim().key().name(), ClaimResult::verdict));
    assertThat(verdicts)
        .isEqualTo(
            Map.of(
                "C1", Verdict.SUPPORTED,
                "C2", Verdict.CONTRADICTED,
                "C3", Verdict.NOT_SETTLED,
                "C4", Verdict.NOT_TESTABLE));
  }

  @Test
  void peakFallsWithHoleError() {
    assertThat(study.holeEffect().verdict()).isEqualTo(EffectVerdict.FALLS);
    double perMillimetre = study.holeEffect().headline().orElseThrow().estimate() / 1000;
    assertThat(perMillimetre).isCloseTo(BurnMaker.FLAME_PER_MM, within(5.0));
  }

  @Test
  void everyRunIsThereWithItsFate() {
    assertThat(study.results().runs()).hasSize(TRUTH.size());
    for (DemoRun truth : TRUTH) {
      RunResult run = study.run(truth.name());
      Outcome outcome =
          switch (truth.fate()) {
            case BOILED, NO_LOG -> Outcome.BOILED;
            case WENT_OUT -> Outcome.WENT_OUT;
            case KNOCKED_OVER -> Outcome.STOPPED;
          };
      assertThat(run.outcome()).as(truth.name()).contains(outcome);
      assertThat(run.inclusion().included()).isEqualTo(truth.fate() != Fate.KNOCKED_OVER);
    }
  }

  @Test
  void boilTimesAreThoseThatHappened() {
    for (DemoRun truth : TRUTH) {
      RunResult run = study.run(truth.name());
      if (truth.fate() == Fate.BOILED) {
        assertThat(run.boil().from()).as(truth.name()).contains(BoilTimeFrom.LOG);
        assertThat(run.boil().boilTime().orNaN())
            .as(truth.name())
            .isCloseTo(truth.happened().boilTime(), within(5.0));
      } else {
        boolean seen = truth.fate() == Fate.NO_LOG;
        assertThat(run.boil().from().equals(Optional.of(BoilTimeFrom.STOPWATCH))).isEqualTo(seen);
        assertThat(run.boil().boilTime().isKnown()).as(truth.name()).isEqualTo(seen);
      }
    }
  }

  /** The flicker is far larger than in the study with known answers, so more is allowed here. */
  @Test
  void peaksAreNearThoseThatHappened() {
    double sum = 0;
    int count = 0;
    for (DemoRun truth : TRUTH) {
      if (truth.fate() == Fate.BOILED) {
        double miss = study.run(truth.name()).flame().peak().orNaN() - truth.happened().heldPeak();
        assertThat(Math.abs(miss)).as(truth.name()).isLessThan(30);
        sum += miss;
        count++;
      }
    }
    assertThat(Math.abs(sum / count)).isLessThan(8);
  }

  @Test
  void holeErrorsAreThoseDrilled() {
    for (Stove stove : Stove.all()) {
      for (RingResult ring : study.results().rings()) {
        if (ring.build().name().equals(stove.name()) && ring.ring().equals("upper")) {
          double reading = 2 * Math.pow(HolesText.READING, 2);
          double expected = Math.sqrt(Math.pow(stove.upperRms(), 2) + reading);
          assertThat(1000 * ring.rms().orNaN()).isCloseTo(expected, within(0.15));
        }
      }
    }
  }
}
