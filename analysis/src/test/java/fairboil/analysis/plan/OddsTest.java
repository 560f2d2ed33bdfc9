package fairboil.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparisons;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.plan.Wish.Kind;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Power before a study against R 4.2.2, and against studies made up and put through analysis. */
class OddsTest {

  private static Odds odds(Kind kind, double size, double stoves, double burns, int designs) {
    return new Odds(
        new Wish(kind, size),
        new Spreads(Spread.stated(burns), Spread.stated(stoves)),
        designs,
        Optional.of(new HoleLevels(0, 3)),
        0.95);
  }

  /**
   * R: ncp {@code abs(beta) * sqrt(Sxx / (sb^2 + sr^2 / n))}, then {@code pt} beyond both sides.
   */
  @ParameterizedTest
  @CsvSource({
    "12, 3, 8, 12, 20, 0.4531449901",
    "6, 1, 8, 12, 20, 0.1265449761",
    "24, 2, 5, 20, 15, 0.2450151045"
  })
  void holeEffects(int builds, int runs, double slope, double sb, double sr, double expected) {
    assertThat(odds(Kind.HOLE_EFFECT, slope, sb, sr, 2).of(builds, runs, Basis.ESTIMATE))
        .isCloseTo(expected, within(1e-9));
  }

  /** R: {@code power.t.test(n = 5, delta = 1.5, sd = 1, strict = TRUE)}; Tukey's by qtukey, pf. */
  @Test
  void differences() {
    assertThat(odds(Kind.DIFFERENCE, 1.5, 0.6, 0.8, 2).of(5, 1, Basis.ESTIMATE))
        .isCloseTo(0.5493855978, within(1e-9));
    assertThat(odds(Kind.DIFFERENCE, 2, 1, 0, 3).of(5, 1, Basis.ESTIMATE))
        .isCloseTo(0.68671541, within(1e-6));
  }

  /** R: {@code power.t.test(delta = d, sd = 1, power = p, strict = TRUE)$n}, rounded up. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.8, 64", "1, 0.8, 17", "1, 0.9, 23", "1.5, 0.9, 11", "2, 0.8, 6"})
  void builds(double difference, double power, int expected) {
    Wish wish = new Wish(Kind.DIFFERENCE, difference);
    Spreads spreads = new Spreads(Spread.stated(0), Spread.stated(1));
    Odds odds = new Odds(wish, spreads, 2, Optional.empty(), 0.95);
    assertThat(Answers.of(wish, spreads, odds, power).need(Basis.ESTIMATE, 1).builds())
        .isEqualTo(OptionalInt.of(expected));
  }

  @Test
  void moreBurnsOfTheSameStovesStopHelping() {
    Odds odds = odds(Kind.DIFFERENCE, 20, 20, 20, 2);
    double limit = odds(Kind.DIFFERENCE, 20, 20, 0, 2).of(8, 1, Basis.ESTIMATE);
    assertThat(odds.of(8, 6, Basis.ESTIMATE))
        .isGreaterThan(odds.of(8, 1, Basis.ESTIMATE))
        .isLessThan(limit);
    assertThat(odds.of(8, 100_000, Basis.ESTIMATE)).isCloseTo(limit, within(1e-3));
  }

  @Test
  void anEstimateOfNothingIsNeverReckonedWith() {
    Spread none = Spread.estimated(0, 7, 4);
    assertThat(none.origin()).isEqualTo(Spread.Origin.NOT_SEEN);
    assertThat(none.at(Basis.ESTIMATE)).isEqualTo(7);
  }

  /** The promise is kept: bounds are four standard errors of a share. */
  @Test
  void promisedPowerIsMet() {
    promise(Kind.DIFFERENCE, 25, 300);
  }

  @Test
  @Tag("long")
  void promisedPowerIsMetAtLength() {
    promise(Kind.DIFFERENCE, 25, 10_000);
  }

  /** Designs that do not differ are found to be no different within 30 K as often as promised. */
  @Test
  void promisedPowerOfAMarginIsMet() {
    promise(Kind.MARGIN, 30, 300);
  }

  @Test
  @Tag("long")
  void promisedPowerOfAMarginIsMetAtLength() {
    promise(Kind.MARGIN, 30, 10_000);
  }

  /** Two designs, stoves differing by 12 K, burns by 20 K. */
  private static void promise(Kind kind, double size, int trials) {
    Wish wish = new Wish(kind, size);
    Spreads spreads = new Spreads(Spread.stated(20), Spread.stated(12));
    Odds odds = new Odds(wish, spreads, 2, Optional.empty(), 0.95);
    Answer.Need need = Answers.of(wish, spreads, odds, 0.8).advice(Basis.ESTIMATE).orElseThrow();
    int builds = need.builds().orElseThrow();
    double promised = odds.of(builds, need.runs(), Basis.ESTIMATE);
    assertThat(promised).isBetween(0.8, 0.9);
    Study study = study(builds, need.runs());
    RandomGenerator random = new SplittableRandom(71);
    int found = 0;
    for (int trial = 0; trial < trials; trial++) {
      found += found(study, wish, builds, need.runs(), random) ? 1 : 0;
    }
    double margin = 4 * Math.sqrt(promised * (1 - promised) / trials);
    assertThat((double) found / trials).isBetween(promised - margin, promised + margin);
  }

  private static Study study(int builds, int runs) {
    TestStudy study = new TestStudy();
    for (int build = 0; build < 2 * builds; build++) {
      study.build("B" + build, build < builds ? "one" : "two");
      for (int run = 0; run < runs; run++) {
        study.run("B" + build + "-" + run, "B" + build, row -> row);
      }
    }
    return study.finish();
  }

  private static boolean found(
      Study study, Wish wish, int builds, int runs, RandomGenerator random) {
    double apart = wish.kind() == Kind.DIFFERENCE ? wish.size() : 0;
    List<RunResult> results = new ArrayList<>();
    for (int build = 0; build < 2 * builds; build++) {
      double mean = 700 + (build < builds ? 0 : apart) + 12 * random.nextGaussian();
      for (int run = 0; run < runs; run++) {
        results.add(
            TestRun.of(study, "B" + build + "-" + run)
                .peak(mean + 20 * random.nextGaussian())
                .result());
      }
    }
    return Comparisons.of(study, results, 0.95).differences().stream()
        .filter(each -> each.measure() == Measure.NORMALISED_PEAK)
        .filter(each -> each.method() == Method.POOLED_BUILD_MEANS)
        .anyMatch(
            each ->
                wish.kind() == Kind.MARGIN
                    ? each.margin() <= wish.size()
                    : each.verdict() != Comparison.Verdict.NOT_SETTLED);
  }
}
