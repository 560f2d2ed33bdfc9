package fairboil.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.effect.HoleEffects;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.layout.HoleError;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Truth by simulation: studies of the planned size, put through the hole effect of the report, find
 * a slope of −8 K for each mm as often as the plan promises. Bounds are four standard errors of a
 * share.
 */
class HolePowerTest {

  private static final HoleLevels LEVELS = new HoleLevels(0.0005, 0.0035);
  private static final double SLOPE = -8000;

  @ParameterizedTest
  @CsvSource({"8, 12, 0.8", "0.5, 15, 0.9"})
  void promisedPowerIsMet(double stoves, double burns, double power) {
    promise(stoves, burns, power, 200);
  }

  @ParameterizedTest
  @Tag("long")
  @CsvSource({"8, 12, 0.8", "0.5, 15, 0.9", "12, 6, 0.8"})
  void promisedPowerIsMetAtLength(double stoves, double burns, double power) {
    promise(stoves, burns, power, 3000);
  }

  private static void promise(double stoves, double burns, double power, int trials) {
    Wish wish = new Wish(Wish.Kind.HOLE_EFFECT, -SLOPE);
    Spreads spreads = new Spreads(Spread.stated(burns), Spread.stated(stoves));
    Odds odds = new Odds(wish, spreads, 2, Optional.of(LEVELS), 0.95);
    Answer.Need need = Answers.of(wish, spreads, odds, power).advice(Basis.ESTIMATE).orElseThrow();
    int builds = need.builds().orElseThrow();
    double promised = odds.of(builds, need.runs(), Basis.ESTIMATE);
    Study study = study(builds, need.runs());
    LayoutResult layout = layout(builds);
    RandomGenerator random = new SplittableRandom(73);
    int found = 0;
    for (int trial = 0; trial < trials; trial++) {
      List<RunResult> runs = runs(study, builds, need.runs(), stoves, burns, random);
      found += isFound(HoleEffects.of(study, runs, layout, 20, 0.95)) ? 1 : 0;
    }
    double margin = 4 * Math.sqrt(promised * (1 - promised) / trials);
    assertThat(promised).isBetween(power, 0.98);
    assertThat((double) found / trials).isBetween(promised - margin, promised + margin);
  }

  private static boolean isFound(HoleEffects.Outcome outcome) {
    HoleEffect effect =
        outcome.effects().stream()
            .filter(each -> each.response() == Measure.NORMALISED_PEAK)
            .findFirst()
            .orElseThrow();
    return !effect.headline().orElseThrow().interval().contains(0);
  }

  private static Study study(int builds, int runs) {
    TestStudy study = new TestStudy();
    for (int build = 0; build < builds; build++) {
      study.build("B" + build, "tall");
      for (int run = 0; run < runs; run++) {
        study.run("B" + build + "-" + run, "B" + build, row -> row);
      }
    }
    return study.finish();
  }

  private static List<RunResult> runs(
      Study study, int builds, int each, double stoves, double burns, RandomGenerator random) {
    int[] levels = HoleLevels.shared(builds);
    List<RunResult> results = new ArrayList<>();
    for (int build = 0; build < builds; build++) {
      double mean = 700 + SLOPE * LEVELS.at(levels[build]) + stoves * random.nextGaussian();
      for (int run = 0; run < each; run++) {
        results.add(
            TestRun.of(study, "B" + build + "-" + run)
                .peak(mean + burns * random.nextGaussian())
                .result());
      }
    }
    return results;
  }

  private static LayoutResult layout(int builds) {
    int[] levels = HoleLevels.shared(builds);
    List<RingResult> rings = new ArrayList<>();
    for (int build = 0; build < builds; build++) {
      rings.add(ring("B" + build, LEVELS.at(levels[build])));
    }
    return new LayoutResult(rings, List.of());
  }

  private static RingResult ring(String build, double rms) {
    Figure unknown = Figure.unknown("it was not given");
    return new RingResult(
        TestStudy.key(build),
        "upper",
        Surface.WALL,
        Optional.empty(),
        0.3,
        12,
        Collections.nCopies(12, new HoleError(1, 0, 0, 1, 1)),
        unknown,
        Figure.known(Measured.of(rms, 0, Dimension.LENGTH)),
        unknown,
        unknown,
        unknown,
        unknown,
        unknown,
        unknown);
  }
}
