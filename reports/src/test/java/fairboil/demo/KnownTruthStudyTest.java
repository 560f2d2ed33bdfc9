package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.demo.KnownTruthStudy.RunTruth;
import fairboil.ingest.sheet.Key;
import java.nio.file.Path;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What truly happened in a study of our own making comes back out of the whole program. */
final class KnownTruthStudyTest {

  private static final KnownTruthStudy TRUTH = new KnownTruthStudy(11);

  @TempDir private static Path folder;

  private static StudyRun study;

  @BeforeAll
  static void workOut() throws Exception {
    study = StudyRun.of(folder, TRUTH.files());
  }

  @Test
  void peaksComeBackWithin3AndAHalfDegreesOnAverageAnd9AtWorst() {
    List<Double> misses =
        TRUTH.runs().stream()
            .map(run -> Math.abs(study.run(run.run()).flame().peak().orNaN() - run.heldPeak()))
            .toList();
    assertThat(misses).allSatisfy(miss -> assertThat(miss).isLessThan(9));
    assertThat(misses.stream().mapToDouble(Double::doubleValue).average().orElseThrow())
        .isLessThan(3.5);
  }

  @Test
  void everyBoilTimeComesBackWithin4Seconds() {
    for (RunTruth run : TRUTH.runs()) {
      assertThat(study.run(run.run()).boil().from()).contains(BoilTimeFrom.LOG);
      assertThat(study.run(run.run()).boil().boilTime().orNaN())
          .as(run.run())
          .isCloseTo(run.boilTime(), within(4.0));
    }
  }

  @Test
  void everyHoleErrorComesBackWithin1Percent() {
    for (KnownTruthStudy.BuildTruth build : TRUTH.builds()) {
      double found =
          study.results().rings().stream()
              .filter(ring -> ring.build().name().equals(build.build()))
              .mapToDouble(ring -> 1000 * ring.rms().orNaN())
              .sum();
      assertThat(found).as(build.build()).isCloseTo(build.rms(), within(0.01 * build.rms()));
    }
  }

  @Test
  void holeEffectIsThatOfTheTruth() {
    double truth =
        slope(
            TRUTH.builds(),
            KnownTruthStudy.BuildTruth::rms,
            build -> meanNormalisedPeak(build.build()));
    assertThat(study.slope(Model.BUILD_MEANS).estimate() / 1000).isCloseTo(truth, within(1.5));
    assertThat(study.holeEffect().verdict()).isEqualTo(EffectVerdict.FALLS);
  }

  /** With as many burns of each build, weighting changes nothing: it is the line of the school. */
  @Test
  void holeEffectIsTheLineThroughTheMeansOfTheBuilds() {
    List<BuildPoint> points = study.holeEffect().points();
    double line = slope(points, BuildPoint::holeError, point -> meanOfBurns(point.build()));
    assertThat(study.slope(Model.BUILD_MEANS).estimate())
        .isCloseTo(line, within(1e-9 * Math.abs(line)));
    assertThat(study.slope(Model.BUILD_MEANS).degreesOfFreedom()).isEqualTo(points.size() - 2.0);
  }

  /** As worked out, before anything is allowed for. */
  private static double meanOfBurns(Key build) {
    return study.results().runs().stream()
        .filter(run -> run.build().key().equals(build))
        .mapToDouble(run -> run.flame().normalisedPeak().orNaN())
        .average()
        .orElseThrow();
  }

  private static double meanNormalisedPeak(String build) {
    return TRUTH.runs().stream()
        .filter(run -> run.build().equals(build))
        .mapToDouble(RunTruth::normalisedPeak)
        .average()
        .orElseThrow();
  }

  private static <T> double slope(List<T> items, ToDoubleFunction<T> x, ToDoubleFunction<T> y) {
    double mean = items.stream().mapToDouble(x).average().orElseThrow();
    double above =
        items.stream()
            .mapToDouble(item -> (x.applyAsDouble(item) - mean) * y.applyAsDouble(item))
            .sum();
    double below =
        items.stream().mapToDouble(item -> Math.pow(x.applyAsDouble(item) - mean, 2)).sum();
    return above / below;
  }
}
