package fairboil.analysis.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.effect.EffectChecks.AllRings;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.layout.HoleError;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Hole effects of two designs and of two rings, of eight invented builds burnt twice each: against
 * R 4.2.2, lm on the means, car 3.1-1 for the variance inflation.
 */
class DesignsAndRingsTest {

  private static final double[] UPPER = {0.4, 0.9, 1.3, 2.1, 2.8, 3.3, 1.1, 2.4};
  private static final double[] LOWER = {1.2, 0.5, 2.2, 1.0, 2.6, 1.9, 0.8, 2.9};

  private static final double[][] BURNS = {
    {655, 649}, {690, 694}, {646, 644}, {675, 670}, {631, 624}, {662, 657}, {648, 650}, {672, 666}
  };

  private static String design(int build) {
    return build % 2 == 0 ? "tall" : "wide";
  }

  private static Study study(int builds, boolean ofTwoDesigns) {
    TestStudy sheets = new TestStudy();
    for (int i = 0; i < builds; i++) {
      sheets.build("B" + i, ofTwoDesigns ? design(i) : "tall");
      sheets.run("B" + i + "-0", "B" + i, row -> row).run("B" + i + "-1", "B" + i, row -> row);
    }
    return sheets.finish();
  }

  private static HoleEffects.Outcome outcome(Study study, boolean bothRings) {
    List<RunResult> runs = new ArrayList<>();
    int builds = study.builds().size();
    List<RingResult> rings = new ArrayList<>();
    for (int i = 0; i < builds; i++) {
      for (int j = 0; j < 2; j++) {
        runs.add(TestRun.of(study, "B" + i + "-" + j).peak(BURNS[i][j]).result());
      }
      rings.add(ring(i, "upper", UPPER[i]));
      if (bothRings) {
        rings.add(ring(i, "lower", LOWER[i]));
      }
    }
    return HoleEffects.of(study, runs, new LayoutResult(rings, List.of()), 20, 0.95);
  }

  /** The same with open areas that are off by so many square millimetres. */
  private static HoleEffects.Outcome withAreas(double... off) {
    Study study = study(8, false);
    List<RunResult> runs = new ArrayList<>();
    List<RingResult> rings = new ArrayList<>();
    for (int i = 0; i < off.length; i++) {
      for (int j = 0; j < 2; j++) {
        runs.add(TestRun.of(study, "B" + i + "-" + j).peak(BURNS[i][j]).result());
      }
      rings.add(ring(i, "upper", UPPER[i], area(100 + off[i]), area(100)));
    }
    return HoleEffects.of(study, runs, new LayoutResult(rings, List.of()), 20, 0.95);
  }

  private static Figure area(double squareMillimetres) {
    return Figure.known(Measured.of(squareMillimetres * 1e-6, 0, Dimension.AREA));
  }

  /** R: cor(upper, off). */
  @Test
  void openAreaThatGoesWithPositionCannotBeSeparatedFromIt() {
    HoleEffects.Outcome together = withAreas(3, 1, 8, 9, 14, 13, 2, 15);
    assertThat(together.checks().get(0).areaCorrelation().orElseThrow())
        .isCloseTo(0.889975360818, within(1e-9));
    assertThat(together.findings())
        .anySatisfy(
            finding ->
                assertThat(finding.toString())
                    .contains("hole position and open area went wrong together", "0.89")
                    .contains("cannot be separated"));
    HoleEffects.Outcome apart = withAreas(3, 9, 1, 2, 8, 3, 9, 4);
    assertThat(apart.checks().get(0).areaCorrelation().orElseThrow())
        .isCloseTo(-0.133971049698, within(1e-9));
    assertThat(apart.findings())
        .noneSatisfy(finding -> assertThat(finding.toString()).contains("separated"));
  }

  private static RingResult ring(int build, String name, double millimetres) {
    Figure unknown = Figure.unknown("it was not given");
    return ring(build, name, millimetres, unknown, unknown);
  }

  private static RingResult ring(
      int build, String name, double millimetres, Figure openArea, Figure intended) {
    Figure unknown = Figure.unknown("it was not given");
    return new RingResult(
        TestStudy.key("B" + build),
        name,
        Surface.WALL,
        Optional.empty(),
        0.314,
        16,
        Collections.nCopies(16, new HoleError(1, 0, 0, millimetres * 1e-3, 1e-9)),
        unknown,
        length(millimetres),
        length(0.3),
        unknown,
        unknown,
        unknown,
        openArea,
        intended);
  }

  private static Figure length(double millimetres) {
    return Figure.known(Measured.of(millimetres * 1e-3, 0, Dimension.LENGTH));
  }

  /** summary(lm(mean ~ upper + design)). */
  @Test
  void designIsAllowedFor() {
    HoleEffect effect = outcome(study(8, true), false).effects().get(0);
    EffectRow slope = HoleEffectsTest.row(effect, Model.BUILD_MEANS, EffectRow.HOLE_ERROR);
    assertThat(slope.estimate() / 1e3).isCloseTo(-12.147315855181, within(1e-7));
    assertThat(slope.standardError() / 1e3).isCloseTo(1.0558617147405, within(1e-7));
    assertThat(slope.degreesOfFreedom()).isEqualTo(5);
    EffectRow wide = HoleEffectsTest.row(effect, Model.BUILD_MEANS, "design wide");
    assertThat(wide.estimate()).isCloseTo(39.289169787765, within(1e-6));
    assertThat(effect.headline()).contains(slope);
    assertThat(effect.allowedFor()).containsExactly("design");
    // lme4's lmer(peak ~ upper + design + (1 | build)) on balanced data has the same estimates
    EffectRow mixed = HoleEffectsTest.row(effect, Model.MIXED, EffectRow.HOLE_ERROR);
    assertThat(mixed.estimate() / 1e3).isCloseTo(-12.147315855181, within(1e-6));
    assertThat(mixed.standardError() / 1e3).isCloseTo(1.0558617147405, within(1e-5));
    assertThat(mixed.degreesOfFreedom()).isCloseTo(5, within(1e-3));
    assertThat(HoleEffectsTest.row(effect, Model.MIXED, "design wide").estimate())
        .isCloseTo(39.289169787765, within(1e-5));
  }

  @Test
  void designThatCannotBeToldFromHoleErrorIsSaid() {
    HoleEffects.Outcome few = outcome(study(3, true), false);
    assertThat(few.effects().get(0).allowedFor()).isEmpty();
    assertThat(few.findings())
        .anySatisfy(
            finding ->
                assertThat(finding.problem().toString())
                    .contains("of 2 designs, and design could not be allowed for"));
  }

  /** Bonferroni for each ring alone; summary(lm(mean ~ upper + lower)) and vif for both. */
  @Test
  void ringsAloneAndTogether() {
    HoleEffects.Outcome outcome = outcome(study(8, false), true);
    EffectChecks upper = outcome.checks().get(0);
    assertThat(upper.confidence()).isCloseTo(0.975, within(1e-12));
    AllRings both = upper.allRings().orElseThrow();
    assertThat(both.row().estimate() / 1e3).isCloseTo(3.4695959822829, within(1e-7));
    assertThat(both.row().standardError() / 1e3).isCloseTo(9.4181018360934, within(1e-7));
    assertThat(both.row().degreesOfFreedom()).isEqualTo(5);
    assertThat(both.inflation()).isCloseTo(1.6041372637396, within(1e-8));
    assertThat(outcome.effects().get(0).rows()).contains(both.row());
    assertThat(outcome.effects().get(0).headline().orElseThrow().model())
        .isEqualTo(Model.BUILD_MEANS);
  }

  @Test
  void ringsAreNotFittedTogetherOfTooFewBuilds() {
    HoleEffects.Outcome outcome = outcome(study(5, false), true);
    assertThat(outcome.checks()).allSatisfy(checks -> assertThat(checks.allRings()).isEmpty());
  }

  /**
   * Without the build's other burn the mean is that burn: lm on the means with that one changed.
   */
  @Test
  void theRunThatPullsHardest() {
    EffectChecks checks = outcome(study(8, true), false).checks().get(0);
    EffectRow headline = outcome(study(8, true), false).effects().get(0).headline().orElseThrow();
    var run = checks.hardestRun().orElseThrow();
    assertThat(run.run().name()).isEqualTo("B4-0");
    assertThat(run.slope() / 1e3).isCloseTo(-12.962962962963, within(0.15));
    assertThat(run.slope()).isNotEqualTo(headline.estimate());
  }

  /**
   * Reading lifts a small RMS more than a large one, which brings them closer together and makes
   * the slope too steep: taken out of the RMS.
   */
  @Test
  void readingTakenOutIsFlatter() {
    HoleEffects.Outcome outcome = outcome(study(8, true), false);
    EffectRow headline = outcome.effects().get(0).headline().orElseThrow();
    EffectRow without = outcome.checks().get(0).readingTakenOut().orElseThrow();
    assertThat(without.estimate() / headline.estimate()).isBetween(0.92, 1.0);
    assertThat(without.interval().width()).isGreaterThan(0.8 * headline.interval().width());
    assertThat(without)
        .isEqualTo(outcome(study(8, true), false).checks().get(0).readingTakenOut().orElseThrow());
  }
}
