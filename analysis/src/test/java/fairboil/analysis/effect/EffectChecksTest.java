package fairboil.analysis.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.effect.EffectChecks.Exactness;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The same question asked in other ways, of six invented builds burnt three times each. */
class EffectChecksTest {

  private static final double[] ERRORS = {0.4, 0.9, 1.3, 2.1, 2.8, 3.3};

  private static final double[][] AMBIENTS = {
    {-5, 10, 22}, {0, 8, 25}, {2, 12, 18}, {-3, 15, 30}, {5, 9, 21}, {-8, 4, 12}
  };

  /** Peaks that follow the air by 0.4, moved to 20 °C as if they followed it by 1. */
  private static final double[][] NORMALISED = {
    {675.4, 663.4, 659.7}, {659.9, 657.1, 643.9}, {659.6, 656.1, 652.5},
    {655.9, 641.1, 634.6}, {648.8, 646.4, 635.7}, {644.1, 637.9, 635.1}
  };

  private static HoleEffects.Outcome outcome(UnaryOperator<List<RunResult>> change) {
    Study study = HoleEffectsTest.sheets(ERRORS, NORMALISED).finish();
    List<RunResult> runs = new ArrayList<>();
    for (int i = 0; i < ERRORS.length; i++) {
      for (int j = 0; j < 3; j++) {
        runs.add(
            TestRun.of(study, "B" + i + "-" + j)
                .peak(NORMALISED[i][j])
                .ambient(AMBIENTS[i][j])
                .result());
      }
    }
    return HoleEffects.of(study, change.apply(runs), HoleEffectsTest.layout(ERRORS), 20, 0.95);
  }

  /**
   * scipy 1.17.1 and numpy on the same numbers: slope on ambient from differences within builds,
   * then stats.linregress of means moved along it, with what it leaves uncertain carried over.
   */
  @Test
  void theAmbientAdjustedRow() {
    HoleEffect effect = outcome(runs -> runs).effects().get(0);
    EffectRow ambient = HoleEffectsTest.row(effect, Model.AMBIENT_ADJUSTED, EffectRow.AMBIENT);
    assertThat(ambient.estimate()).isCloseTo(0.38469785575048765, within(1e-10));
    assertThat(ambient.standardError()).isCloseTo(0.044110678239207654, within(1e-10));
    assertThat(ambient.interval().low()).isCloseTo(0.28761090754441443, within(1e-9));
    EffectRow slope = HoleEffectsTest.row(effect, Model.AMBIENT_ADJUSTED, EffectRow.HOLE_ERROR);
    assertThat(slope.estimate()).isCloseTo(-9197.364845260134, within(1e-6));
    assertThat(slope.standardError()).isCloseTo(1329.9691511829076, within(1e-6));
    assertThat(slope.degreesOfFreedom()).isCloseTo(4.013839551338441, within(1e-9));
    // the slope of 1 is excluded, so this is the answer
    assertThat(effect.headline()).contains(slope);
    assertThat(effect.verdict()).isEqualTo(EffectVerdict.FALLS);
    assertThat(effect.rows())
        .extracting(EffectRow::model)
        .contains(Model.BUILD_MEANS, Model.MIXED, Model.BURN_LEVEL);
  }

  @Test
  void whereTheConventionHoldsMeansOfBuildsAnswer() {
    HoleEffect effect =
        outcome(
                runs ->
                    runs.stream()
                        .map(
                            run -> {
                              int build = run.build().key().name().charAt(1) - '0';
                              int burn = run.run().key().name().charAt(3) - '0';
                              return TestRun.of(
                                      HoleEffectsTest.sheets(ERRORS, NORMALISED).finish(),
                                      run.run().key().name())
                                  .peak(
                                      650 - 9 * ERRORS[build] + build % 2 + (burn == 1 ? 3 : -1.5))
                                  .ambient(AMBIENTS[build][burn])
                                  .result();
                            })
                        .toList())
            .effects()
            .get(0);
    assertThat(effect.headline().orElseThrow().model()).isEqualTo(Model.BUILD_MEANS);
    assertThat(HoleEffectsTest.row(effect, Model.AMBIENT_ADJUSTED, EffectRow.AMBIENT).interval())
        .satisfies(interval -> assertThat(interval.contains(1)).isTrue());
  }

  @Test
  void otherWaysOfAskingAgree() {
    HoleEffects.Outcome outcome = outcome(runs -> runs);
    EffectChecks checks = outcome.checks().get(0);
    EffectRow headline = outcome.effects().get(0).headline().orElseThrow();
    assertThat(checks.theilSen().orElseThrow().slope())
        .isCloseTo(headline.estimate(), within(headline.standardError()));
    assertThat(checks.permutation().orElseThrow().floor()).isCloseTo(1 / 720.0, within(1e-12));
    assertThat(checks.permutation().orElseThrow().pValue()).isLessThan(0.05);
    assertThat(checks.exactness()).isEqualTo(Exactness.EXACT);
    assertThat(checks.withoutEachBuild())
        .hasSize(6)
        .allSatisfy(without -> assertThat(without.slope()).isNegative());
    assertThat(checks.curvature().orElseThrow().degreesOfFreedom()).isEqualTo(3);
    // t(0.975) + t(0.8) standard errors, by scipy at these degrees of freedom
    assertThat(checks.smallestSlope().orElseThrow() / headline.standardError())
        .isCloseTo(2.77267375 + 0.9405885, within(1e-6));
    assertThat(checks.ambientCorrelation()).isPresent();
    assertThat(checks.withExcluded()).isEmpty();
  }

  @Test
  void excludedRunsAreShownWithAndWithout() {
    HoleEffects.Outcome outcome =
        outcome(
            runs -> {
              List<RunResult> changed = new ArrayList<>(runs);
              changed.set(
                  0,
                  TestRun.of(HoleEffectsTest.sheets(ERRORS, NORMALISED).finish(), "B0-0")
                      .peak(400)
                      .ambient(-5)
                      .excluded("probe slipped")
                      .result());
              return changed;
            });
    EffectChecks checks = outcome.checks().get(0);
    assertThat(checks.exactness()).isEqualTo(Exactness.APPROXIMATE);
    assertThat(outcome.effects().get(0).headline().orElseThrow().runs()).isEqualTo(17);
    assertThat(checks.withExcluded().orElseThrow().runs()).isEqualTo(18);
    assertThat(checks.withExcluded().orElseThrow().estimate())
        .isGreaterThan(outcome.effects().get(0).headline().orElseThrow().estimate());
  }

  @Test
  void hotDaysForBadStovesAreAFinding() {
    HoleEffects.Outcome outcome =
        outcome(
            runs -> {
              Study study = HoleEffectsTest.sheets(ERRORS, NORMALISED).finish();
              List<RunResult> changed = new ArrayList<>();
              for (RunResult run : runs) {
                int build = run.build().key().name().charAt(1) - '0';
                changed.add(
                    TestRun.of(study, run.run().key().name())
                        .peak(run.flame().peak().orNaN())
                        .ambient(10 * build + run.conditions().ambient().orNaN() / 10)
                        .result());
              }
              return changed;
            });
    assertThat(outcome.findings())
        .anySatisfy(
            finding -> assertThat(finding.problem().toString()).contains("burnt in warmer air"));
  }
}
