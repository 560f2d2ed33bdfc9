package fairboil.analysis.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect.BandPoint;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Slopes on means of builds against scipy 1.17.1: stats.linregress on the means where all builds
 * have as many burns (which is what R's lm gives), and where not, weighted least squares with the
 * variance between builds by optimize.brentq on the Mandel–Paule equation, standard errors scaled
 * by the residual mean square.
 */
class HoleEffectsTest {

  private static final double[] ERRORS = {0.4, 0.9, 1.3, 2.1, 2.8, 3.3};

  private static final double[][] BALANCED = {
    {655, 648, 661}, {650, 640, 642}, {652, 655, 646},
    {630, 640, 629}, {641, 633, 640}, {618, 625, 631}
  };

  private static final double[][] UNBALANCED = {
    {655, 648, 661, 659}, {650}, {652, 655, 646},
    {630, 640}, {641, 633, 640, 644, 650}, {618, 625, 631}
  };

  @Test
  void equalRunsArePlainLeastSquaresOnMeans() {
    HoleEffect effect = effects(ERRORS, BALANCED).effects().get(0);
    EffectRow slope = row(effect, Model.BUILD_MEANS, EffectRow.HOLE_ERROR);
    assertThat(slope.estimate()).isCloseTo(-8920.335429769393, within(1e-8));
    assertThat(slope.standardError()).isCloseTo(2255.3318908450847, within(1e-8));
    assertThat(slope.degreesOfFreedom()).isEqualTo(4);
    assertThat(slope.interval().low()).isCloseTo(-15182.140618702713, within(1e-6));
    assertThat(slope.interval().high()).isCloseTo(-2658.530240836074, within(1e-6));
    assertThat(slope.pValue().orElseThrow()).isCloseTo(0.016744552378475545, within(1e-11));
    assertThat(slope.runs()).isEqualTo(18);
    assertThat(slope.builds()).isEqualTo(6);
    EffectRow intercept = row(effect, Model.BUILD_MEANS, EffectRow.INTERCEPT);
    assertThat(intercept.estimate()).isCloseTo(656.9454926624737, within(1e-9));
    assertThat(intercept.standardError()).isCloseTo(4.676755748679882, within(1e-10));
    assertThat(effect.headline()).contains(slope);
    assertThat(effect.verdict()).isEqualTo(EffectVerdict.FALLS);
  }

  @Test
  void burnLevelIsTheNaiveFit() {
    HoleEffect effect = effects(ERRORS, BALANCED).effects().get(0);
    EffectRow slope = row(effect, Model.BURN_LEVEL, EffectRow.HOLE_ERROR);
    assertThat(slope.standardError()).isCloseTo(1585.624673987453, within(1e-8));
    assertThat(slope.degreesOfFreedom()).isEqualTo(16);
    assertThat(slope.pValue().orElseThrow()).isCloseTo(3.792709314210573e-05, within(1e-13));
  }

  @Test
  void bandCoversTheRange() {
    List<BandPoint> band = effects(ERRORS, BALANCED).effects().get(0).band();
    BandPoint first = band.get(0);
    assertThat(first.holeError()).isEqualTo(0.4e-3);
    assertThat(first.fitted()).isCloseTo(653.3773584905659, within(1e-9));
    assertThat(first.interval().low()).isCloseTo(642.4955012613545, within(1e-8));
    assertThat(first.interval().high()).isCloseTo(664.2592157197773, within(1e-8));
    BandPoint last = band.get(band.size() - 1);
    assertThat(last.holeError()).isCloseTo(3.3e-3, within(1e-15));
    assertThat(last.interval().low()).isCloseTo(616.1160297112649, within(1e-8));
  }

  @Test
  void unequalRunsAreWeighted() {
    HoleEffect effect = effects(ERRORS, UNBALANCED).effects().get(0);
    EffectRow slope = row(effect, Model.BUILD_MEANS, EffectRow.HOLE_ERROR);
    assertThat(slope.estimate()).isCloseTo(-9193.985175654845, within(1e-6));
    assertThat(slope.standardError()).isCloseTo(2230.461727400722, within(1e-6));
    assertThat(row(effect, Model.BUILD_MEANS, EffectRow.INTERCEPT).standardError())
        .isCloseTo(4.781205778299598, within(1e-8));
  }

  @Test
  void fewBuildsAreSaidInWords() {
    String[] said = {
      null,
      "1 build has both hole positions in ring upper and a normalised peak: no line through 1"
          + " point",
      "2 builds have both hole positions in ring upper and a normalised peak: no line through 2"
          + " points can be tested"
    };
    for (int builds = 1; builds <= 2; builds++) {
      HoleEffects.Outcome outcome =
          effects(Arrays.copyOf(ERRORS, builds), Arrays.copyOf(BALANCED, builds));
      HoleEffect effect = outcome.effects().get(0);
      assertThat(effect.verdict()).isEqualTo(EffectVerdict.TOO_FEW_BUILDS);
      assertThat(effect.rows()).isEmpty();
      assertThat(effect.headline()).isEmpty();
      assertThat(effect.band()).isEmpty();
      String words = said[builds];
      String remedy = "drill and burn at least " + (4 - builds) + " more builds";
      assertThat(outcome.findings())
          .anySatisfy(
              finding -> {
                assertThat(finding.problem().toString()).contains(words);
                assertThat(finding.remedy().toString()).isEqualTo(remedy);
              });
    }
  }

  @Test
  void noHolesAtAllIsANote() {
    HoleEffects.Outcome outcome = effects(new double[0], new double[0][]);
    assertThat(outcome.effects()).isEmpty();
    assertThat(outcome.findings()).hasSize(1);
  }

  @Test
  void equalErrorsHaveNoEffectToSee() {
    double[] same = {1.2, 1.2, 1.2, 1.2};
    HoleEffect effect = effects(same, Arrays.copyOf(BALANCED, 4)).effects().get(0);
    assertThat(effect.verdict()).isEqualTo(EffectVerdict.NO_SPREAD);
    assertThat(effect.rows()).isEmpty();
  }

  @Test
  void equalResponsesHaveNoScatterToJudgeBy() {
    double[][] same = {{700.1, 700.1}, {700.1, 700.1}, {700.1, 700.1}, {700.1, 700.1}};
    HoleEffects.Outcome outcome = effects(Arrays.copyOf(ERRORS, 4), same);
    HoleEffect effect = outcome.effects().get(0);
    assertThat(effect.verdict()).isEqualTo(EffectVerdict.NO_SCATTER);
    assertThat(effect.rows()).isEmpty();
    assertThat(effect.band()).isEmpty();
    assertThat(outcome.findings())
        .anySatisfy(
            finding ->
                assertThat(finding.problem().toString())
                    .contains("all burns have the same normalised peak"));
  }

  @Test
  void threeBuildsOfOneRunGiveAWideInterval() {
    HoleEffect effect =
        effects(Arrays.copyOf(ERRORS, 3), new double[][] {{650}, {648}, {633}}).effects().get(0);
    assertThat(effect.headline().orElseThrow().degreesOfFreedom()).isEqualTo(1);
    assertThat(effect.verdict()).isEqualTo(EffectVerdict.NOT_SETTLED);
  }

  @Test
  void excludedRunsAndRunsWithoutFigureDoNotCount() {
    TestStudy sheets = sheets(ERRORS, BALANCED);
    sheets.run("spilt", "B0", row -> row).run("no log", "B1", row -> row);
    Study study = sheets.finish();
    List<RunResult> runs = runs(study, BALANCED);
    runs.add(TestRun.of(study, "spilt").peak(200).excluded("pot knocked over").result());
    runs.add(TestRun.of(study, "no log").result());
    HoleEffect effect = HoleEffects.of(study, runs, layout(ERRORS), 20, 0.95).effects().get(0);
    assertThat(effect.headline().orElseThrow().estimate())
        .isCloseTo(-8920.335429769393, within(1e-8));
    assertThat(effect.headline().orElseThrow().runs()).isEqualTo(18);
  }

  @Test
  void aBuildThatDidNotAlwaysBoilHasNoMeanBoilTime() {
    Study study = sheets(ERRORS, BALANCED).finish();
    List<RunResult> runs = runs(study, BALANCED);
    runs.set(0, TestRun.of(study, "B0-0").peak(655).outcome(Outcome.DID_NOT_BOIL).result());
    HoleEffects.Outcome outcome = HoleEffects.of(study, runs, layout(ERRORS), 20, 0.95);
    assertThat(outcome.effects().get(0).points()).hasSize(6);
    assertThat(outcome.effects().get(2).points()).hasSize(5);
  }

  @Test
  void aHoleRingThatWasNotMeasuredIsAFinding() {
    Study study = sheets(ERRORS, BALANCED).setting(Settings.HOLE_RING, "lower").finish();
    HoleEffects.Outcome outcome =
        HoleEffects.of(study, runs(study, BALANCED), layout(ERRORS), 20, 0.95);
    assertThat(outcome.findings())
        .anySatisfy(
            finding -> assertThat(finding.problem().toString()).contains("no holes of ring lower"));
    assertThat(outcome.effects())
        .allSatisfy(effect -> assertThat(effect.verdict()).isEqualTo(EffectVerdict.TOO_FEW_BUILDS));
  }

  /** numpy on the same numbers: least squares on a constant, hole error and a third column. */
  @Test
  void covariatesAreAllowedForByTheirMeans() {
    double[] moisture = {8.1, 7.2, 9.0, 8.4, 7.0, 9.4};
    TestStudy sheets = new TestStudy().setting(Settings.COVARIATES, List.of("moisture", "colour"));
    for (int i = 0; i < 6; i++) {
      String text = String.valueOf(moisture[i]);
      sheets.build("B" + i, "one");
      for (int j = 0; j < 3; j++) {
        sheets.run(
            "B" + i + "-" + j,
            "B" + i,
            row -> row.extra("Moisture", Given.of(text, text, Place.of("runs.csv"))));
      }
    }
    Study study = sheets.finish();
    HoleEffects.Outcome outcome =
        HoleEffects.of(study, runs(study, BALANCED), layout(ERRORS), 20, 0.95);
    HoleEffect effect = outcome.effects().get(0);
    EffectRow slope = row(effect, Model.BUILD_MEANS, EffectRow.HOLE_ERROR);
    assertThat(slope.estimate()).isCloseTo(-8807.205903490714, within(1e-6));
    assertThat(slope.standardError()).isCloseTo(2669.744369645049, within(1e-6));
    assertThat(slope.degreesOfFreedom()).isEqualTo(3);
    assertThat(row(effect, Model.BUILD_MEANS, "Moisture").estimate())
        .isCloseTo(-0.5534644516395275, within(1e-9));
    assertThat(effect.band()).isNotEmpty();
  }

  static EffectRow row(HoleEffect effect, Model model, String term) {
    return effect.rows().stream()
        .filter(row -> row.model() == model && row.term().equals(term))
        .findFirst()
        .orElseThrow();
  }

  private static HoleEffects.Outcome effects(double[] errors, double[][] burns) {
    Study study = sheets(errors, burns).finish();
    return HoleEffects.of(study, runs(study, burns), layout(errors), 20, 0.95);
  }

  static TestStudy sheets(double[] errors, double[][] burns) {
    TestStudy study = new TestStudy();
    for (int i = 0; i < errors.length; i++) {
      study.build("B" + i, "one");
      for (int j = 0; j < burns[i].length; j++) {
        study.run("B" + i + "-" + j, "B" + i, row -> row);
      }
    }
    return study;
  }

  private static List<RunResult> runs(Study study, double[][] burns) {
    List<RunResult> runs = new ArrayList<>();
    for (int i = 0; i < burns.length; i++) {
      for (int j = 0; j < burns[i].length; j++) {
        runs.add(TestRun.of(study, "B" + i + "-" + j).peak(burns[i][j]).boilTime(500 + j).result());
      }
    }
    return runs;
  }

  static LayoutResult layout(double[] errors) {
    List<RingResult> rings = new ArrayList<>();
    Figure unknown = Figure.unknown("it was not given");
    for (int i = 0; i < errors.length; i++) {
      rings.add(
          new RingResult(
              TestStudy.key("B" + i),
              "upper",
              Surface.WALL,
              Optional.empty(),
              0.314,
              16,
              List.of(),
              unknown,
              Figure.known(Measured.of(errors[i] * 1e-3, 0.1e-3, Dimension.LENGTH)),
              unknown,
              unknown,
              unknown,
              unknown,
              unknown,
              unknown));
    }
    return new LayoutResult(rings, List.of());
  }
}
