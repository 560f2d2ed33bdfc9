package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.EffectRow.Model;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program finds what R finds from the same numbers. */
final class RulerStudyEndToEndTest {

  private static final double RELATIVE = 1e-6;

  @TempDir private static Path folder;

  private static StudyRun study;

  @BeforeAll
  static void workOut() throws Exception {
    study = StudyRun.of(folder, RulerStudy.files());
  }

  @Test
  void peaksAreTheNumbersTyped() {
    for (int build = 0; build < RulerStudy.PEAKS.size(); build++) {
      for (int burn = 0; burn < 3; burn++) {
        double peak =
            study.run("R" + (build + 1) + "-" + (burn + 1)).flame().normalisedPeak().orNaN();
        assertThat(peak).isCloseTo(RulerStudy.PEAKS.get(build).get(burn), within(1e-6));
      }
    }
  }

  @Test
  void buildMeansGiveTheLineOfR() {
    assertIs(RulerStudy.BUILD_MEANS, study.slope(Model.BUILD_MEANS));
  }

  @Test
  void burnsGiveTheLineOfR() {
    assertIs(RulerStudy.BURN_LEVEL, study.slope(Model.BURN_LEVEL));
  }

  private static void assertIs(RulerStudy.Line expected, EffectRow row) {
    assertNear(expected.slope(), row.estimate());
    assertNear(expected.standardError(), row.standardError());
    assertNear(expected.low(), row.interval().low());
    assertNear(expected.high(), row.interval().high());
    assertThat(row.degreesOfFreedom()).isEqualTo(expected.degreesOfFreedom());
  }

  private static void assertNear(double perMillimetre, double perMetre) {
    assertThat(perMetre / 1000)
        .isCloseTo(perMillimetre, within(RELATIVE * Math.abs(perMillimetre)));
  }
}
