package fairboil.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class StudyAnalysisTest {

  private static final References REFERENCES =
      new References(1, 20, 20, 99.97, 0, NormaliseBy.AUTO);

  private static TestStudy sheets() {
    TestStudy sheets = new TestStudy().wall("upper", 4, 200);
    for (int build = 0; build < 4; build++) {
      String name = "B" + build;
      sheets.build(name, "one");
      for (int hole = 0; hole < 4; hole++) {
        sheets.hole(name, "upper", hole + 1, 50 * hole + (hole % 2 == 0 ? build : 0), 15);
      }
      for (int run = 0; run < 3; run++) {
        sheets.run(name + "-" + run, name, row -> row);
      }
    }
    return sheets;
  }

  private static RunResult result(Study study, Run run) {
    int build = run.build().name().charAt(1) - '0';
    int number = run.key().name().charAt(3) - '0';
    return TestRun.of(study, run.key().name())
        .peak(640 - 8 * build + 2 * number)
        .boilTime(400 + 5 * build + number)
        .result();
  }

  @Test
  void resultsAreInTheOrderOfTheStudyOnAnyNumberOfWorkers() {
    Study study = sheets().finish();
    Results one = StudyAnalysis.of(study, REFERENCES, run -> result(study, run), 1);
    Results many =
        StudyAnalysis.of(
            study,
            REFERENCES,
            run -> {
              pause(run);
              return result(study, run);
            },
            3);
    assertThat(one.runs()).extracting(run -> run.run().key().name()).startsWith("B0-0", "B0-1");
    assertThat(many.runs()).extracting(run -> run.run().key()).isEqualTo(keys(one));
    assertThat(many.findings()).isEqualTo(one.findings());
    assertThat(many.builds()).isEqualTo(one.builds());
    assertThat(many.rings()).isEqualTo(one.rings());
    assertThat(many.holeEffects().get(0).rows()).isEqualTo(one.holeEffects().get(0).rows());
    assertThat(one.rings()).hasSize(4);
    assertThat(one.holeEffects().get(0).rows()).isNotEmpty();
  }

  private static List<Key> keys(Results results) {
    return results.runs().stream().map(run -> run.run().key()).toList();
  }

  /** The first runs take longest, so that they end last. */
  private static void pause(Run run) {
    try {
      Thread.sleep(run.key().name().equals("B0-0") ? 40 : 1);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void noMoreRunsAreWorkedOnAtOnceThanThereAreWorkers() {
    Study study = sheets().finish();
    AtomicInteger now = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    StudyAnalysis.of(
        study,
        REFERENCES,
        run -> {
          most.accumulateAndGet(now.incrementAndGet(), Math::max);
          pause(run);
          now.decrementAndGet();
          return result(study, run);
        },
        2);
    assertThat(most.get()).isBetween(1, 2);
  }

  @Test
  void aFailureInAWorkerComesOut() {
    Study study = sheets().finish();
    assertThatThrownBy(
            () ->
                StudyAnalysis.of(
                    study,
                    REFERENCES,
                    run -> {
                      throw new IllegalStateException("broken " + run.key());
                    },
                    2))
        .hasMessageContaining("broken");
  }

  @Test
  void aStudyOfNothingIsNotBroken() {
    Results results =
        StudyAnalysis.of(
            new TestStudy().finish(),
            REFERENCES,
            run -> {
              throw new AssertionError();
            },
            2);
    assertThat(results.runs()).isEmpty();
    assertThat(results.confidence()).isCloseTo(0.95, within(1e-12));
  }

  @Test
  void anImpossibleConfidenceIsAFinding() {
    Study study = sheets().setting(Settings.CONFIDENCE, Quantity.of(100, Unit.PERCENT)).finish();
    Results results = StudyAnalysis.of(study, REFERENCES, run -> result(study, run), 1);
    assertThat(results.confidence()).isCloseTo(0.95, within(1e-12));
    assertThat(results.findings())
        .anySatisfy(finding -> assertThat(finding.problem().toString()).contains("confidence"));
  }
}
