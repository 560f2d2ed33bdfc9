package fairboil.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
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
        .peak(640 - 8 * build + build % 2 + 2 * number) // not on one line
        .boilTime(400 + 5 * build + build % 2 + number)
        .result();
  }

  @Test
  void resultsAreInTheOrderOfTheStudyOnAnyNumberOfWorkers() {
    Study study = sheets().finish();
    Results one = StudyAnalysis.of(study, REFERENCES, (run, faults) -> result(study, run), 1);
    Results many =
        StudyAnalysis.of(
            study,
            REFERENCES,
            (run, faults) -> {
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

  private static RunResult run(Results results, String name) {
    return results.runs().stream()
        .filter(run -> run.run().key().name().equals(name))
        .findFirst()
        .orElseThrow();
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
        (run, faults) -> {
          most.accumulateAndGet(now.incrementAndGet(), Math::max);
          pause(run);
          now.decrementAndGet();
          return result(study, run);
        },
        2);
    assertThat(most.get()).isBetween(1, 2);
  }

  private static Results withRunLost(Study study, int workers) {
    return StudyAnalysis.of(
        study,
        REFERENCES,
        (run, faults) -> {
          pause(run);
          if (run.key().name().equals("B1-0")) {
            throw new IllegalStateException("unforeseen at " + run.key());
          }
          return result(study, run);
        },
        workers);
  }

  @Test
  void aRunAtWhichTheProgramFailsKeepsItsRowAndTheRestStands() {
    Study study = sheets().finish();
    Results whole = StudyAnalysis.of(study, REFERENCES, (run, faults) -> result(study, run), 1);
    Results results = withRunLost(study, 2);
    assertThat(results.runs()).hasSameSizeAs(whole.runs());
    RunResult lost = run(results, "B1-0");
    assertThat(lost.inclusion().included()).isFalse();
    assertThat(lost.inclusion().excluded().orElseThrow().toString()).contains("program failed");
    assertThat(lost.boil().boilTime().isKnown()).isFalse();
    assertThat(results.builds().get(0)).isEqualTo(whole.builds().get(0));
    assertThat(results.builds().get(1).runs()).isEqualTo(whole.builds().get(1).runs() - 1);
    assertThat(results.withExcluded()).isEmpty();
    assertThat(results.findings())
        .filteredOn(finding -> finding.problem().toString().contains("failed at run B1-0"))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.place()).isEqualTo(lost.run().row().place());
            });
  }

  @Test
  void faultsAreTheSameOnAnyNumberOfWorkers() {
    Study study = sheets().finish();
    List<Fault> one = withRunLost(study, 1).faults();
    assertThat(one).hasSize(1);
    assertThat(one.get(0).trace())
        .startsWith("java.lang.IllegalStateException: unforeseen at B1-0\n")
        .contains(StudyAnalysisTest.class.getName());
    assertThat(withRunLost(study, 3).faults()).isEqualTo(one);
  }

  @Test
  void aLogAtWhichTheProgramFailsCostsThatLogOnly() {
    Study study = sheets().finish();
    Results results =
        StudyAnalysis.of(
            study,
            run -> {
              if (run.key().name().equals("B1-0")) {
                throw new ArrayIndexOutOfBoundsException(7);
              }
              return new OpenedLog(Optional.empty(), Optional.empty(), List.of());
            },
            2);
    assertThat(results.faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.part()).hasToString("the log of run B1-0"));
    RunResult without = run(results, "B1-0");
    assertThat(without.inclusion().included()).isTrue();
    assertThat(without.findings()).contains(results.faults().get(0).finding());
    assertThat(results.findings()).containsOnlyOnce(results.faults().get(0).finding());
  }

  /** Whoever asks for a fuel measure of this run hits upon a thing that nobody foresaw. */
  private static RunResult withoutFuel(RunResult run) {
    return new RunResult(
        run.run(),
        run.build(),
        run.inclusion(),
        run.state(),
        run.conditions(),
        run.timeline(),
        run.flame(),
        run.boil(),
        run.energy(),
        null,
        run.sketch(),
        run.source(),
        run.rows(),
        run.samples(),
        run.findings());
  }

  private static UnaryOperator<Row.Builder> claim(Measure measure, double value, Unit unit) {
    return row ->
        row.put(ClaimsSheet.CLAIM, "c")
            .put(ClaimsSheet.TEXT, "as it says")
            .put(ClaimsSheet.MEASURE, measure.label())
            .put(ClaimsSheet.RELATION, Relation.AT_LEAST)
            .put(ClaimsSheet.HOLDS_FOR, HoldsFor.ON_AVERAGE)
            .put(ClaimsSheet.VALUE, new Amount(value, 0, Optional.of(unit)));
  }

  @Test
  void aMeasureAtWhichTheProgramFailsCostsThatMeasureOnly() {
    Study study =
        sheets()
            .claim("slow", claim(Measure.BOIL_TIME, 100, Unit.SECOND))
            .claim("good", claim(Measure.EFFICIENCY, 10, Unit.PERCENT))
            .finish();
    Results whole = StudyAnalysis.of(study, REFERENCES, (run, faults) -> result(study, run), 1);
    Results results =
        StudyAnalysis.of(study, REFERENCES, (run, faults) -> withoutFuel(result(study, run)), 2);
    assertThat(whole.faults()).isEmpty();
    assertThat(results.faults())
        .extracting(fault -> fault.part().toString())
        .contains(
            "the comparison by build of efficiency",
            "the scatter of efficiency",
            "the mean efficiency of build B0",
            "claim good")
        .noneMatch(part -> part.contains("boil time") || part.contains("peak"));
    assertThat(results.comparisons()).isEqualTo(whole.comparisons()).isNotEmpty();
    assertThat(results.repeatability()).isEqualTo(whole.repeatability()).isNotEmpty();
    assertThat(results.builds()).isEqualTo(whole.builds());
    assertThat(results.claims().get(0)).isEqualTo(whole.claims().get(0));
    ClaimResult lost = results.claims().get(1);
    assertThat(lost.verdict()).isEqualTo(Verdict.NOT_TESTABLE);
    assertThat(lost.reason().orElseThrow().toString()).contains("this program failed");
  }

  @Test
  void aStudyOfNothingIsNotBroken() {
    Results results =
        StudyAnalysis.of(
            new TestStudy().finish(),
            REFERENCES,
            (run, faults) -> {
              throw new AssertionError();
            },
            2);
    assertThat(results.runs()).isEmpty();
    assertThat(results.confidence()).isCloseTo(0.95, within(1e-12));
  }

  @Test
  void anImpossibleConfidenceIsAFinding() {
    Study study = sheets().setting(Settings.CONFIDENCE, Quantity.of(100, Unit.PERCENT)).finish();
    Results results = StudyAnalysis.of(study, REFERENCES, (run, faults) -> result(study, run), 1);
    assertThat(results.confidence()).isCloseTo(0.95, within(1e-12));
    assertThat(results.findings())
        .anySatisfy(finding -> assertThat(finding.problem().toString()).contains("confidence"));
  }
}
