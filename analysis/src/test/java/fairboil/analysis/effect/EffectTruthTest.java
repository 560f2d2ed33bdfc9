package fairboil.analysis.effect;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.TestStudy;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.Regressors;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Truth by simulation: studies in which hole error does nothing, and how often each way of asking
 * says that it does. Bounds of the short forms are three to four standard errors of a share.
 */
class EffectTruthTest {

  private static final double SHORT_MARGIN = 0.021;
  private static final int SHORT = 1200;
  private static final int LONG = 10_000;

  /** Runs of each of eight builds. */
  private static final int[] BALANCED = {4, 4, 4, 4, 4, 4, 4, 4};

  private static final int[] TWO_TO_ONE = {3, 6, 4, 5, 6, 3, 4, 5};

  @Test
  void falseAlarmsOnMeansOfBuilds() {
    for (double ratio : new double[] {0, 0.5, 1, 2}) {
      assertThat(alarms(BALANCED, ratio, SHORT))
          .as("σb/σr %s", ratio)
          .isBetween(0.05 - SHORT_MARGIN, 0.05 + SHORT_MARGIN);
    }
    assertThat(alarms(TWO_TO_ONE, 1, SHORT)).isBetween(0.025, 0.075);
  }

  @Test
  @Tag("long")
  void falseAlarmsOnMeansOfBuildsAtLength() {
    for (double ratio : new double[] {0, 0.5, 1, 2}) {
      assertThat(alarms(BALANCED, ratio, LONG)).as("σb/σr %s", ratio).isBetween(0.045, 0.055);
      assertThat(alarms(TWO_TO_ONE, ratio, LONG)).as("σb/σr %s", ratio).isBetween(0.04, 0.06);
    }
  }

  /** Why the build is the unit: eight stoves of four burns "find" an effect in 23 % of studies. */
  @Test
  void aLineThroughAllBurnsCriesWolf() {
    RandomGenerator random = new SplittableRandom(21);
    int alarms = 0;
    for (int trial = 0; trial < SHORT; trial++) {
      List<Burns> builds = study(BALANCED, 1, 0, random);
      double[] errors =
          builds.stream()
              .flatMapToDouble(
                  build -> Arrays.stream(build.point().burns()).map(b -> build.point().holeError()))
              .toArray();
      double[] burns =
          builds.stream().flatMapToDouble(build -> Arrays.stream(build.point().burns())).toArray();
      LinearFit fit = LinearFit.of(Regressors.line("x", errors), burns).orElseThrow();
      alarms += fit.interval("x", 0.95).contains(0) ? 0 : 1;
    }
    assertThat((double) alarms / SHORT).isBetween(0.19, 0.27);
  }

  @Test
  void intervalsOfTheSlopeCoverIt() {
    assertThat(coverage(BALANCED, SHORT)).isBetween(0.95 - SHORT_MARGIN, 0.95 + SHORT_MARGIN);
  }

  @Test
  @Tag("long")
  void intervalsOfTheSlopeCoverItAtLength() {
    assertThat(coverage(BALANCED, LONG)).isBetween(0.935, 0.965);
    assertThat(coverage(TWO_TO_ONE, LONG)).isBetween(0.935, 0.965);
  }

  /** The whole answer, choosing its headline by the weather: beads follow the air by 0.4. */
  @Test
  void choosingTheHeadlineByTheAmbientCostsLittle() {
    assertThat(chosenAlarms(400)).isBetween(0.02, 0.085);
  }

  @Test
  @Tag("long")
  void choosingTheHeadlineByTheAmbientCostsLittleAtLength() {
    assertThat(chosenAlarms(4000)).isBetween(0.035, 0.065);
  }

  private static double chosenAlarms(int trials) {
    RandomGenerator random = new SplittableRandom(22);
    int alarms = 0;
    for (int trial = 0; trial < trials; trial++) {
      List<Burns> builds = study(BALANCED, 1, 0, random);
      List<Burns> followed = new ArrayList<>();
      for (Burns build : builds) {
        double[] ambients = new double[build.ambients().length];
        double[] burns = build.point().burns();
        for (int i = 0; i < ambients.length; i++) {
          ambients[i] = 12 + 8 * random.nextGaussian();
          // a bead that follows by 0.4, moved to 20 °C as if it followed by 1
          burns[i] += (0.4 - 1) * (ambients[i] - 20) / 10;
        }
        BuildPoint point = build.point();
        followed.add(
            new Burns(
                new BuildPoint(point.build(), point.design(), point.holeError(), burns), ambients));
      }
      HoleEffect effect =
          new EffectFit(Measure.NORMALISED_PEAK, "upper", followed, 20, 0.95).effect();
      alarms += effect.verdict() == HoleEffect.EffectVerdict.NOT_SETTLED ? 0 : 1;
    }
    return (double) alarms / trials;
  }

  private static double alarms(int[] runs, double ratio, int trials) {
    RandomGenerator random = new SplittableRandom(20);
    int alarms = 0;
    for (int trial = 0; trial < trials; trial++) {
      alarms += slope(study(runs, ratio, 0, random)).interval().contains(0) ? 0 : 1;
    }
    return (double) alarms / trials;
  }

  private static double coverage(int[] runs, int trials) {
    RandomGenerator random = new SplittableRandom(23);
    int covered = 0;
    for (int trial = 0; trial < trials; trial++) {
      covered += slope(study(runs, 1, -2, random)).interval().contains(-2) ? 1 : 0;
    }
    return (double) covered / trials;
  }

  private static EffectRow slope(List<Burns> builds) {
    return Line.through(builds).row(Model.BUILD_MEANS, EffectRow.HOLE_ERROR, 0.95, 32);
  }

  private static List<Burns> study(int[] runs, double ratio, double slope, RandomGenerator random) {
    List<Burns> builds = new ArrayList<>();
    for (int build = 0; build < runs.length; build++) {
      double error = 0.5 + random.nextDouble() * 3;
      double mean = slope * error + ratio * random.nextGaussian();
      double[] burns = new double[runs[build]];
      for (int run = 0; run < burns.length; run++) {
        burns[run] = mean + random.nextGaussian();
      }
      builds.add(
          new Burns(
              new BuildPoint(TestStudy.key("B" + build), Optional.empty(), error, burns),
              new double[runs[build]]));
    }
    return builds;
  }
}
