package fairboil.analysis;

import static fairboil.analysis.NoNaN.assertNoNaN;
import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Few data, equal data and odd data never break the analysis, and never give NaN. */
class FewDataTest {

  private static final References REFERENCES =
      new References(1, 20, 20, 99.97, 0, NormaliseBy.AUTO);

  private static Study study(int builds, int runs, String designs) {
    TestStudy sheets =
        new TestStudy()
            .setting(Settings.COMPARE_BY, List.of("tester", "design"))
            .setting(Settings.COVARIATES, List.of("order"))
            .wall("upper", 4, 200);
    for (int build = 0; build < builds; build++) {
      String name = "B" + build;
      sheets.build(name, designs.equals("one") ? "one" : "design " + build % 2);
      for (int hole = 0; hole < 4; hole++) {
        sheets.hole(name, "upper", hole + 1, 50 * hole + (hole % 2 == 0 ? build : 0), 15);
      }
      for (int run = 0; run < runs; run++) {
        sheets.run(name + "-" + run, name, row -> row);
      }
    }
    for (HoldsFor holdsFor : HoldsFor.values()) {
      for (Relation relation : Relation.values()) {
        for (String measure : List.of("boil time", "share that boiled", "hole effect on peak")) {
          Unit unit = measure.equals("boil time") ? Unit.SECOND : Unit.FRACTION;
          double value = measure.equals("boil time") ? 400 : 0;
          sheets.claim(
              measure + relation + holdsFor,
              row ->
                  row.put(ClaimsSheet.CLAIM, "c")
                      .put(ClaimsSheet.TEXT, "as it says")
                      .put(ClaimsSheet.MEASURE, measure)
                      .put(ClaimsSheet.RELATION, relation)
                      .put(ClaimsSheet.HOLDS_FOR, holdsFor)
                      .put(ClaimsSheet.VALUE, new Amount(value, 0, Optional.of(unit)))
                      .put(ClaimsSheet.MARGIN, new Amount(1, 0, Optional.of(unit))));
        }
      }
    }
    return sheets.finish();
  }

  private static Results analysed(Study study, Function<Run, RunResult> result) {
    Results results = StudyAnalysis.of(study, REFERENCES, (run, faults) -> result.apply(run), 1);
    assertThat(results.faults()).isEmpty();
    assertNoNaN(results.builds(), "builds");
    assertNoNaN(results.rings(), "rings");
    assertNoNaN(results.holeEffects(), "effects");
    assertNoNaN(results.effectChecks(), "checks");
    assertNoNaN(results.comparisons(), "comparisons");
    assertNoNaN(results.rankComparisons(), "ranks");
    assertNoNaN(results.repeatability(), "repeatability");
    assertNoNaN(results.claims(), "claims");
    return results;
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, one",
    "1, 1, one",
    "1, 3, one",
    "2, 1, one",
    "2, 3, two",
    "3, 1, one",
    "3, 1, two",
    "3, 2, two",
    "6, 1, two",
    "6, 2, one"
  })
  void fewBuildsAndRuns(int builds, int runs, String designs) {
    Study study = study(builds, runs, designs);
    analysed(
        study,
        run -> {
          int number = run.key().name().hashCode() % 7;
          return TestRun.of(study, run.key().name())
              .peak(640 + number)
              .boilTime(400 + 3 * number)
              .ambient(10 + number)
              .result();
        });
  }

  @Test
  void allValuesEqual() {
    Study study = study(4, 3, "two");
    Results results =
        analysed(
            study,
            run ->
                TestRun.of(study, run.key().name())
                    .peak(640.3)
                    .boilTime(400.7)
                    .ambient(20)
                    .result());
    assertThat(results.comparisons())
        .allSatisfy(pair -> assertThat(pair.adjustedPValue()).isEqualTo(1));
  }

  @Test
  void nothingBoiled() {
    Study study = study(4, 3, "two");
    Results results =
        analysed(
            study,
            run ->
                TestRun.of(study, run.key().name()).peak(500).outcome(Outcome.WENT_OUT).result());
    assertThat(results.claims())
        .filteredOn(claim -> claim.claim().row().get(ClaimsSheet.MEASURE).equals("boil time"))
        .allSatisfy(
            claim -> {
              assertThat(claim.verdict()).isEqualTo(Verdict.NOT_SETTLED);
              assertThat(claim.reason()).isPresent();
            });
  }

  @Test
  void nothingKnown() {
    Study study = study(4, 2, "two");
    Results results = analysed(study, run -> TestRun.of(study, run.key().name()).result());
    assertThat(results.comparisons()).isEmpty();
    assertThat(results.repeatability()).isEmpty();
  }
}
