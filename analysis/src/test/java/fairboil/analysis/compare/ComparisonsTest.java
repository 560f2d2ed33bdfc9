package fairboil.analysis.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two invented designs of three builds, four runs each, half of them with the lid on. */
class ComparisonsTest {

  private static final int BUILDS = 6;
  private static final int RUNS = 4;

  private static String design(int build) {
    return build < 3 ? "plain" : "ribbed";
  }

  /** A lid saves about 30 s, with 2 s to and fro from build to build. */
  private static double seconds(int build, int run) {
    double lid = run < 2 ? 0 : -30 + 2 * (build % 3);
    return (build < 3 ? 500 : 440) + 12 * (build % 3) + 3 * (run % 2) + lid;
  }

  private static Study study() {
    TestStudy study = new TestStudy().setting(Settings.COMPARE_BY, List.of("Lid", "colour"));
    for (int build = 0; build < BUILDS; build++) {
      study.build("B" + build, design(build));
      for (int run = 0; run < RUNS; run++) {
        Lid lid = run < 2 ? Lid.OFF : Lid.ON;
        LocalDate day = LocalDate.of(2026, build < 3 ? 1 : 5, 1 + run);
        study.run(
            "B" + build + "-" + run,
            "B" + build,
            row ->
                row.put(RunsSheet.LID, lid).put(RunsSheet.DATE, day).put(RunsSheet.TESTER, "Ida"));
      }
    }
    return study.finish();
  }

  private static List<RunResult> runs(Study study) {
    List<RunResult> runs = new ArrayList<>();
    for (int build = 0; build < BUILDS; build++) {
      for (int run = 0; run < RUNS; run++) {
        runs.add(
            TestRun.of(study, "B" + build + "-" + run)
                .boilTime(seconds(build, run))
                .ambient(build < 3 ? run : 20 + run)
                .result());
      }
    }
    return runs;
  }

  private static List<Comparison> of(Comparisons.Outcome outcome, String level, Method method) {
    return outcome.differences().stream()
        .filter(each -> each.measure() == Measure.BOIL_TIME)
        .filter(each -> each.level().equals(level) && each.method() == method)
        .toList();
  }

  @Test
  void designsAreComparedOnMeansOfBuilds() {
    Study study = study();
    Comparisons.Outcome outcome = Comparisons.of(study, runs(study), 0.95);
    Comparison pooled = of(outcome, "design", Method.POOLED_BUILD_MEANS).get(0);
    assertThat(pooled.a()).isEqualTo("plain");
    assertThat(pooled.b()).isEqualTo("ribbed");
    assertThat(pooled.difference()).isCloseTo(60, within(1e-9));
    // 6 builds less 2 designs
    assertThat(pooled.degreesOfFreedom()).isEqualTo(4);
    assertThat(pooled.verdict()).isEqualTo(Verdict.HIGHER);
    assertThat(of(outcome, "design", Method.WELCH_BUILD_MEANS)).hasSize(1);
    assertThat(of(outcome, "build", Method.TUKEY_KRAMER)).hasSize(15);
    assertThat(of(outcome, "build", Method.TUKEY_KRAMER).get(0).degreesOfFreedom()).isEqualTo(18);
    assertThat(of(outcome, "build", Method.GAMES_HOWELL)).hasSize(15);
  }

  @Test
  void lidsAreComparedWithinBuilds() {
    Study study = study();
    Comparisons.Outcome outcome = Comparisons.of(study, runs(study), 0.95);
    Comparison lids = of(outcome, "lid", Method.WITHIN_BUILDS).get(0);
    assertThat(lids.a()).isEqualTo("off");
    assertThat(lids.difference()).isCloseTo(28, within(1e-9));
    assertThat(lids.degreesOfFreedom()).isEqualTo(5);
    // differences 30, 28, 26, 30, 28, 26: sd sqrt(16/5)
    assertThat(lids.standardError()).isCloseTo(Math.sqrt(16 / 5.0 / 6), within(1e-9));
    assertThat(lids.verdict()).isEqualTo(Verdict.HIGHER);
    assertThat(outcome.findings()).isEmpty();
  }

  @Test
  void runsThatDidNotBoilAreComparedByRank() {
    Study study = study();
    List<RunResult> runs = runs(study);
    runs.set(0, TestRun.of(study, "B0-0").outcome(Outcome.DID_NOT_BOIL).result());
    Comparisons.Outcome outcome = Comparisons.of(study, runs, 0.95);
    assertThat(of(outcome, "design", Method.POOLED_BUILD_MEANS)).isEmpty();
    assertThat(of(outcome, "build", Method.TUKEY_KRAMER)).hasSize(10);
    RankComparison designs =
        outcome.ranks().stream()
            .filter(rank -> rank.level().equals("design") && rank.measure() == Measure.BOIL_TIME)
            .findFirst()
            .orElseThrow();
    assertThat(designs.boilsA().boiled()).isEqualTo(11);
    assertThat(designs.boilsA().judged()).isEqualTo(12);
    assertThat(designs.boilsB().judged()).isEqualTo(12);
    // three builds against three: the smallest share that ranks allow is 2 in 20
    assertThat(designs.unit()).isEqualTo(RankComparison.Unit.BUILDS);
    assertThat(designs.test().superiority()).isBetween(0.8, 1.0);
    assertThat(designs.test().pValue()).isCloseTo(0.1, within(1e-12));
    RankComparison lids =
        outcome.ranks().stream()
            .filter(rank -> rank.level().equals("lid") && rank.measure() == Measure.BOIL_TIME)
            .findFirst()
            .orElseThrow();
    // six builds of six are slower with the lid off: 2 in 64
    assertThat(lids.unit()).isEqualTo(RankComparison.Unit.WITHIN_BUILDS);
    assertThat(lids.test().pValue()).isCloseTo(2 / 64.0, within(1e-12));
  }

  @Test
  void nothingToCompareIsNotBroken() {
    Study none = new TestStudy().finish();
    assertThat(Comparisons.of(none, List.of(), 0.95).differences()).isEmpty();
    Study one = new TestStudy().build("A", "x").run("A-1", "A", row -> row).finish();
    List<RunResult> runs = List.of(TestRun.of(one, "A-1").boilTime(400).result());
    assertThat(Comparisons.of(one, runs, 0.95).differences()).isEmpty();
    assertThat(FairnessFinder.of(one, runs).groups()).hasSize(2);
  }

  @Test
  void whatCannotBeToldApartIsFound() {
    Study study = study();
    Fairness fairness = FairnessFinder.of(study, runs(study));
    assertThat(fairness.groups()).extracting(Fairness.Group::name).contains("B0", "plain", "on");
    assertThat(fairness.inseparable())
        .filteredOn(pair -> pair.level().equals("design"))
        .extracting(pair -> pair.ofA().column())
        .containsExactlyInAnyOrder("ambient", "date");
    assertThat(fairness.inseparable()).filteredOn(pair -> pair.level().equals("lid")).isEmpty();
    Fairness.Group plain =
        fairness.groups().stream()
            .filter(group -> group.name().equals("plain"))
            .findFirst()
            .orElseThrow();
    assertThat(plain.runs()).isEqualTo(12);
    assertThat(plain.conditions())
        .contains(new Fairness.Condition.Kinds("tester", 12, List.of("Ida")));
  }
}
