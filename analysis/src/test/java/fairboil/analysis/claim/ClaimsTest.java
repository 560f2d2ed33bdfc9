package fairboil.analysis.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Selection;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Claims about invented stoves; the intervals against R where a number is given. */
class ClaimsTest {

  /** Boil times of two designs of three builds; build C1 alone of its design. */
  private static final Map<String, double[]> BOIL_TIMES =
      new TreeMap<>(
          Map.of(
              "A1", new double[] {400, 410, 405},
              "A2", new double[] {420, 430, 428},
              "A3", new double[] {415, 409, 418},
              "B1", new double[] {500, 490, 505},
              "B2", new double[] {480, 470, 481},
              "B3", new double[] {495, 499, 493},
              "C1", new double[] {380, 390, 385}));

  private static Amount amount(double number, Unit unit) {
    return new Amount(number, 0, Optional.of(unit));
  }

  private static TestStudy sheets() {
    TestStudy study = new TestStudy();
    BOIL_TIMES.forEach(
        (build, times) -> {
          study.build(build, "design " + build.charAt(0));
          for (int i = 0; i < times.length; i++) {
            Lid lid = i == 0 ? Lid.OFF : Lid.ON;
            study.run(build + "-" + i, build, row -> row.put(RunsSheet.LID, lid));
          }
        });
    return study;
  }

  private static List<RunResult> runs(Study study) {
    List<RunResult> runs = new ArrayList<>();
    BOIL_TIMES.forEach(
        (build, times) -> {
          for (int i = 0; i < times.length; i++) {
            runs.add(
                TestRun.of(study, build + "-" + i)
                    .boilTime(times[i])
                    .peak(600 + times[i] / 10)
                    .shared(3)
                    .result());
          }
        });
    return runs;
  }

  private static Row.Builder claim(
      Row.Builder row, String measure, Relation relation, Amount value) {
    return row.put(ClaimsSheet.CLAIM, "c")
        .put(ClaimsSheet.TEXT, "as it says")
        .put(ClaimsSheet.MEASURE, measure)
        .put(ClaimsSheet.RELATION, relation)
        .put(ClaimsSheet.VALUE, value);
  }

  private static ClaimResult only(UnaryOperator<Row.Builder> filler) {
    return outcome(filler).results().get(0);
  }

  private static Claims.Outcome outcome(UnaryOperator<Row.Builder> filler) {
    Study study = sheets().claim("c", filler).finish();
    return Claims.of(study, runs(study), List.of(), 0.95);
  }

  private static Selection named(String name) {
    return new Selection.Named(name);
  }

  private static String said(ClaimResult claim) {
    return claim.reason().orElseThrow().toString();
  }

  @Test
  void aBuildIsJudgedByItsRuns() {
    ClaimResult result =
        only(
            row ->
                claim(row, "boil time", Relation.AT_MOST, amount(7, Unit.MINUTE))
                    .put(ClaimsSheet.ABOUT, named("A1")));
    // R: mean(c(400, 410, 405)) = 405, sd 5; 405 ± qt(.975, 2) 5 / sqrt(3)
    Interval interval = result.estimate().orElseThrow().interval();
    assertThat(interval.high()).isCloseTo(405 + 4.302652730 * 5 / Math.sqrt(3), within(1e-6));
    assertThat(result.verdict()).isEqualTo(Verdict.SUPPORTED);
    assertThat(result.runs()).isEqualTo(3);
    assertThat(result.builds()).isEqualTo(1);
    assertThat(result.confidence()).isCloseTo(0.95, within(1e-12));
    assertThat(result.reason()).isEmpty();
  }

  @Test
  void aDesignIsJudgedByItsBuilds() {
    ClaimResult result =
        only(
            row ->
                claim(row, "Boil Time ", Relation.AT_MOST, amount(7, Unit.MINUTE))
                    .put(ClaimsSheet.ABOUT, named("design A")));
    // means 405, 426, 414: mean 415, sd sqrt(111); nine runs alone would have settled it
    assertThat(result.estimate().orElseThrow().value()).isCloseTo(415, within(1e-9));
    assertThat(result.estimate().orElseThrow().interval().high())
        .isCloseTo(415 + 4.302652730 * Math.sqrt(111.0 / 3), within(1e-6));
    assertThat(result.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(result.builds()).isEqualTo(3);
  }

  @Test
  void aDesignOfOneBuildIsAboutThatStove() {
    ClaimResult result =
        only(
            row ->
                claim(row, "boil time", Relation.AT_LEAST, amount(420, Unit.SECOND))
                    .put(ClaimsSheet.ABOUT, named("design C")));
    assertThat(result.verdict()).isEqualTo(Verdict.CONTRADICTED);
    assertThat(said(result)).contains("one build");
  }

  @Test
  void whereChoosesRuns() {
    ClaimResult result =
        only(
            row ->
                claim(row, "boil time", Relation.AT_MOST, amount(8, Unit.MINUTE))
                    .put(ClaimsSheet.ABOUT, named("A1"))
                    .put(ClaimsSheet.WHERE, new Selection.Where(Map.of("Lid", "ON"))));
    assertThat(result.runs()).isEqualTo(2);
    assertThat(result.estimate().orElseThrow().value()).isCloseTo(407.5, within(1e-9));
  }

  @Test
  void mClaimsShareTheChanceOfError() {
    TestStudy sheets = sheets();
    for (int i = 0; i < 4; i++) {
      sheets.claim(
          "c" + i,
          row ->
              claim(row, "boil time", Relation.AT_MOST, amount(7, Unit.MINUTE))
                  .put(ClaimsSheet.ABOUT, named("A1")));
    }
    sheets.claim(
        "co", row -> claim(row, "carbon monoxide", Relation.AT_MOST, amount(1, Unit.PERCENT)));
    Study study = sheets.finish();
    List<ClaimResult> results = Claims.of(study, runs(study), List.of(), 0.95).results();
    assertThat(results.get(0).confidence()).isCloseTo(1 - 0.05 / 4, within(1e-12));
    // R: qt(1 - .05/8, 2) = 8.860
    assertThat(results.get(0).estimate().orElseThrow().interval().high())
        .isCloseTo(405 + 8.8602 * 5 / Math.sqrt(3), within(1e-3));
    assertThat(results.get(4).verdict()).isEqualTo(Verdict.NOT_TESTABLE);
    assertThat(said(results.get(4))).isEqualTo("nothing here measures carbon monoxide");
  }

  @Test
  void whatTheSensorSharesCountsOnceAgainstAFixedTemperature() {
    ClaimResult result =
        only(
            row ->
                claim(row, "peak", Relation.AT_LEAST, amount(630, Unit.CELSIUS))
                    .put(ClaimsSheet.ABOUT, named("A1")));
    // sd 0.5 of 640, 641, 640.5: scatter 0.2887, with 3 K shared 3.0139; so well known that its
    // degrees of freedom are 2 (3.0139 / 0.2887)^4 = 23,763
    Interval interval = result.estimate().orElseThrow().interval();
    assertThat(interval.width() / 2).isCloseTo(1.96 * 3.01386, within(1e-3));
    assertThat(result.verdict()).isEqualTo(Verdict.SUPPORTED);
  }

  @Test
  void noDifferentNeedsAMarginAndTestsFromBothSides() {
    ClaimResult without =
        only(row -> claim(row, "boil time", Relation.NO_DIFFERENT_FROM, amount(405, Unit.SECOND)));
    assertThat(without.verdict()).isEqualTo(Verdict.NOT_TESTABLE);
    ClaimResult with =
        only(
            row ->
                claim(row, "boil time", Relation.NO_DIFFERENT_FROM, amount(405, Unit.SECOND))
                    .put(ClaimsSheet.ABOUT, named("A1"))
                    .put(ClaimsSheet.MARGIN, amount(9, Unit.SECOND)));
    // 90 % interval: qt(.95, 2) = 2.919986, half width 8.43; the 95 % one would not fit
    assertThat(with.confidence()).isCloseTo(0.9, within(1e-12));
    assertThat(with.estimate().orElseThrow().interval().width() / 2)
        .isCloseTo(2.919986 * 5 / Math.sqrt(3), within(1e-5));
    assertThat(with.verdict()).isEqualTo(Verdict.SUPPORTED);
    assertThat(with.bounds()).contains(Interval.around(405, 9));
  }

  @Test
  void designsAreComparedOnMeansOfBuilds() {
    ClaimResult result =
        only(
            row ->
                claim(row, "boil time", Relation.AT_MOST, amount(-30, Unit.SECOND))
                    .put(ClaimsSheet.ABOUT, named("design A"))
                    .put(ClaimsSheet.AGAINST, named("design B")));
    // scipy 1.17.1 ttest_ind of 405, 426, 414 and 495 - 1/... means 498.333, 477, 495.667:
    double[] a = {405, 426, 414};
    double[] b = {1495.0 / 3, 1431.0 / 3, 1487.0 / 3};
    double difference = 415 - (b[0] + b[1] + b[2]) / 3;
    double variance = (squares(a) + squares(b)) / 4;
    // qt(.975, 4) = 2.776445
    double half = 2.776445105 * Math.sqrt(variance * 2 / 3);
    Interval interval = result.estimate().orElseThrow().interval();
    assertThat(result.estimate().orElseThrow().value()).isCloseTo(difference, within(1e-9));
    assertThat(interval.width() / 2).isCloseTo(half, within(1e-6));
    assertThat(result.verdict()).isEqualTo(Verdict.SUPPORTED);
  }

  private static double squares(double[] values) {
    double mean = (values[0] + values[1] + values[2]) / 3;
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return squares;
  }

  @Test
  void lidsAreComparedWithinBuilds() {
    ClaimResult result =
        only(
            row ->
                row.put(ClaimsSheet.CLAIM, "c")
                    .put(ClaimsSheet.TEXT, "A lid saves time.")
                    .put(ClaimsSheet.MEASURE, "boil time")
                    .put(ClaimsSheet.RELATION, Relation.AT_MOST)
                    .put(ClaimsSheet.ABOUT, new Selection.Where(Map.of("lid", "on")))
                    .put(ClaimsSheet.AGAINST, new Selection.Where(Map.of("lid", "off"))));
    assertThat(result.builds()).isEqualTo(7);
    assertThat(result.bounds()).contains(new Interval(Double.NEGATIVE_INFINITY, 0));
    assertThat(result.verdict()).isEqualTo(Verdict.NOT_SETTLED);
  }

  @Test
  void failuresLeaveNoMeanToJudge() {
    Study study =
        sheets()
            .claim(
                "c",
                row ->
                    claim(row, "boil time", Relation.AT_MOST, amount(7, Unit.MINUTE))
                        .put(ClaimsSheet.ABOUT, named("A1")))
            .claim(
                "s",
                row ->
                    claim(row, "share that boiled", Relation.AT_LEAST, amount(90, Unit.PERCENT))
                        .put(ClaimsSheet.ABOUT, named("A1")))
            .finish();
    List<RunResult> runs = runs(study);
    runs.set(0, TestRun.of(study, "A1-0").outcome(Outcome.DID_NOT_BOIL).result());
    List<ClaimResult> results = Claims.of(study, runs, List.of(), 0.95).results();
    assertThat(results.get(0).verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(said(results.get(0))).contains("1 of 3 runs did not boil");
    assertThat(results.get(1).estimate().orElseThrow().value()).isCloseTo(2 / 3.0, within(1e-12));
    assertThat(results.get(1).verdict()).isEqualTo(Verdict.NOT_SETTLED);
  }

  @Test
  void whatCannotBeReadIsAFindingAtItsCell() {
    Claims.Outcome unit =
        outcome(row -> claim(row, "boil time", Relation.AT_MOST, amount(400, Unit.GRAM)));
    assertThat(unit.results().get(0).verdict()).isEqualTo(Verdict.NOT_TESTABLE);
    assertThat(unit.findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.place()).hasToString("claims.csv, line 2, column value");
              assertThat(finding.problem().toString()).contains("is not a time");
            });

    Claims.Outcome measure =
        outcome(row -> claim(row, "boiling time", Relation.AT_MOST, amount(7, Unit.MINUTE)));
    assertThat(measure.findings())
        .singleElement()
        .satisfies(
            finding -> assertThat(finding.remedy().toString()).contains("did you mean boil time?"));

    Claims.Outcome nobody =
        outcome(
            row ->
                claim(row, "boil time", Relation.AT_MOST, amount(7, Unit.MINUTE))
                    .put(ClaimsSheet.ABOUT, named("Z9")));
    assertThat(said(nobody.results().get(0))).isEqualTo("no build and no design is called Z9");
  }

  @Test
  void withoutAHoleEffectNothingIsSettled() {
    ClaimResult effect =
        only(row -> claim(row, "hole effect on peak", Relation.AT_MOST, amount(0, Unit.CELSIUS)));
    assertThat(effect.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(said(effect)).isEqualTo("there is no hole effect to judge it by");
  }

  @Test
  void mostRunsOfABuildAreJudgedByFactorsOfItsScatter() {
    ClaimResult result =
        only(
            row ->
                claim(row, "boil time", Relation.AT_MOST, amount(480, Unit.SECOND))
                    .put(ClaimsSheet.ABOUT, named("A1"))
                    .put(ClaimsSheet.HOLDS_FOR, HoldsFor.MOST_RUNS));
    // mean 405, sd 5; scipy 1.17.1 nct.ppf((.025, .975), 2, norm.ppf(.95) sqrt(3)) / sqrt(3)
    Interval interval = result.estimate().orElseThrow().interval();
    assertThat(interval.low()).isCloseTo(405 + 5 * 0.4784888, within(1e-4));
    assertThat(interval.high()).isCloseTo(405 + 5 * 10.9267756, within(1e-4));
    assertThat(result.estimate().orElseThrow().value())
        .isCloseTo(405 + 5 * 1.644853627, within(1e-8));
    assertThat(result.verdict()).isEqualTo(Verdict.SUPPORTED);
  }

  @Test
  void mostRunsOfADesignNeedThreeBuildsAndAreTheSameEveryTime() {
    UnaryOperator<Row.Builder> filler =
        row ->
            claim(row, "boil time", Relation.AT_MOST, amount(1000, Unit.SECOND))
                .put(ClaimsSheet.ABOUT, named("design A"))
                .put(ClaimsSheet.HOLDS_FOR, HoldsFor.MOST_RUNS);
    ClaimResult result = only(filler);
    assertThat(result.estimate()).isEqualTo(only(filler).estimate());
    // far wider than for one stove: three builds say little of others
    assertThat(result.estimate().orElseThrow().interval().high()).isBetween(470.0, 700.0);
    assertThat(result.builds()).isEqualTo(3);
    ClaimResult two =
        only(
            row ->
                filler
                    .apply(row)
                    .put(
                        ClaimsSheet.WHERE,
                        new Selection.Where(Map.of("build", "A1", "design", "design A"))));
    assertThat(said(two)).contains("one build");
  }

  @Test
  void aMeanThatIsTooShortCanStillContradict() {
    Study study =
        sheets()
            .claim(
                "c",
                row ->
                    claim(row, "boil time", Relation.AT_MOST, amount(300, Unit.SECOND))
                        .put(ClaimsSheet.ABOUT, named("A1")))
            .finish();
    List<RunResult> runs = runs(study);
    runs.set(0, TestRun.of(study, "A1-0").outcome(Outcome.DID_NOT_BOIL).result());
    ClaimResult result = Claims.of(study, runs, List.of(), 0.95).results().get(0);
    assertThat(result.verdict()).isEqualTo(Verdict.CONTRADICTED);
    assertThat(said(result)).contains("too short");
    assertThat(result.estimate()).as("a mean of survivors").isEmpty();
  }

  @Test
  void whatWouldSettleAClaimIsSaid() {
    ClaimResult result =
        only(
            row ->
                claim(row, "boil time", Relation.AT_MOST, amount(425, Unit.SECOND))
                    .put(ClaimsSheet.ABOUT, named("design A")));
    // R: pt(qt(.975, n - 1), n - 1, 10 / sqrt(111 / n), lower = FALSE) is 0.76 at 10, 0.81 at 11
    assertThat(result.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(said(result))
        .isEqualTo(
            "about 11 such builds of 3 burns each would be needed to settle it four times in five,"
                + " if the true mean is as found here");
  }

  /**
   * 9 of 9 have the exact interval 66.4 % to 100 % (Clopper and Pearson); 0.025^(1/n) exceeds 90 %
   * from n = 36.
   */
  @Test
  void howManyBurnsAShareNeedsIsSaid() {
    ClaimResult result =
        only(
            row ->
                claim(row, "share that boiled", Relation.AT_LEAST, amount(90, Unit.PERCENT))
                    .put(ClaimsSheet.ABOUT, named("design A")));
    assertThat(result.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(said(result))
        .isEqualTo(
            "about 36 such burns would be needed to settle it four times in five, if the true share"
                + " is as found here");
  }

  @Test
  void sharesAreComparedByTheirExactIntervals() {
    Study study =
        sheets()
            .claim(
                "s",
                row ->
                    claim(row, "share that boiled", Relation.AT_LEAST, amount(0, Unit.PERCENT))
                        .put(ClaimsSheet.ABOUT, named("design A"))
                        .put(ClaimsSheet.AGAINST, named("design B")))
            .finish();
    List<RunResult> runs = runs(study);
    for (int i = 9; i < 18; i++) {
      String name = runs.get(i).run().key().name();
      runs.set(i, TestRun.of(study, name).outcome(Outcome.WENT_OUT).result());
    }
    ClaimResult result = Claims.of(study, runs, List.of(), 0.95).results().get(0);
    assertThat(result.estimate().orElseThrow().value()).isEqualTo(1);
    // 9 of 9 against 0 of 9: each arm sqrt(2) * (1 - 0.025^(1/9))
    assertThat(result.estimate().orElseThrow().interval().low())
        .isCloseTo(1 - Math.sqrt(2) * (1 - Math.pow(0.025, 1 / 9.0)), within(1e-9));
    assertThat(result.verdict()).isEqualTo(Verdict.SUPPORTED);
  }

  /** 9 burns of design A, of which so many were seen; all of those boiled. */
  private static ClaimResult shareSeen(int seen, Relation relation, double percent) {
    Study study =
        sheets()
            .claim(
                "s",
                row ->
                    claim(row, "share that boiled", relation, amount(percent, Unit.PERCENT))
                        .put(ClaimsSheet.ABOUT, named("design A")))
            .finish();
    List<RunResult> runs = runs(study);
    for (int i = seen; i < 9; i++) {
      runs.set(i, TestRun.of(study, runs.get(i).run().key().name()).notSeen().result());
    }
    return Claims.of(study, runs, List.of(), 0.95).results().get(0);
  }

  @Test
  void whatNobodySawIsNoFailure() {
    ClaimResult none = shareSeen(0, Relation.AT_LEAST, 70);
    assertThat(none.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(none.estimate()).isEmpty();
    assertThat(said(none)).isEqualTo("in none of 9 runs was it seen whether the water boiled");
  }

  /**
   * 9 of 9 is 66.4 % at least, 7 of 9 is 40.0 %, and of 2 of 9 the interval is 2.8 % to 60.0 % (R:
   * binom.test(7, 9)$conf.int, binom.test(2, 9)$conf.int).
   */
  @Test
  void unseenRunsThatCouldOverturnAVerdictLeaveItOpen() {
    assertThat(shareSeen(9, Relation.AT_LEAST, 50).verdict()).isEqualTo(Verdict.SUPPORTED);
    ClaimResult open = shareSeen(7, Relation.AT_LEAST, 50);
    assertThat(open.verdict()).isEqualTo(Verdict.NOT_SETTLED);
    assertThat(open.estimate().orElseThrow().value()).isEqualTo(1);
    assertThat(open.estimate().orElseThrow().interval().low()).isCloseTo(0.3999, within(1e-4));
    assertThat(open.runs()).isEqualTo(7);
    assertThat(said(open)).startsWith("in 2 more runs nobody saw");
    assertThat(shareSeen(7, Relation.AT_LEAST, 35).verdict()).isEqualTo(Verdict.SUPPORTED);
    assertThat(shareSeen(7, Relation.AT_MOST, 35).verdict()).isEqualTo(Verdict.CONTRADICTED);
  }
}
