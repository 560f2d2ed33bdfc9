package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.EffectChecks.AllRings;
import fairboil.analysis.effect.EffectChecks.Exactness;
import fairboil.analysis.effect.EffectChecks.WithoutBuild;
import fairboil.analysis.effect.EffectChecks.WithoutRun;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.SlopePermutation;
import fairboil.analysis.model.TheilSen;
import fairboil.ingest.sheet.Key;
import fairboil.reports.SampleResults;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CheckWordsTest {

  private final CheckWords words = CheckWords.of(SampleResults.twoBuilds());

  @Test
  void eachCheckIsASentence() {
    EffectChecks checks =
        new EffectChecks(
            Measure.NORMALISED_PEAK,
            "upper",
            0.95,
            OptionalDouble.of(-0.62),
            OptionalDouble.of(0.1),
            Optional.of(new TheilSen(-9_000, Optional.of(new Interval(-15_000, -3_000)), 0.96)),
            Optional.of(new SlopePermutation(0.0004, 0.0001, SlopePermutation.Method.ALL)),
            Exactness.EXACT,
            List.of(without("T1", -12_000), without("T2", -7_000)),
            Optional.of(bend(-1e6, -3e6, 1e6)),
            OptionalDouble.of(6_000),
            Optional.empty(),
            Optional.empty(),
            Optional.of(
                new WithoutRun(new Key("s", "T1-2"), -8_000, new Interval(-14_000, -2_000))),
            Optional.of(new AllRings(slope(-6_000, -13_000, 1_000), 2.345)));
    assertThat(words.sentences(checks).stream().map(it -> it.replace('\u00a0', ' ')))
        .containsExactly(
            "Leaving out one build at a time, the slope lies between −12.0 (without T1) and −7.0"
                + " °C per mm (without T2).",
            "The build that pulls hardest on the line is T1 (Cook's distance 0.10).",
            "The median of the slopes between pairs of builds, which no single build can drag, is"
                + " −9.0 °C per mm (96 % interval −15.0 to −3.0).",
            "Dealing the hole errors out anew among the builds of each design gives a slope as"
                + " steep in fewer than 0.1 % of all deals (exact; with these builds it cannot"
                + " be less than 0.01 %).",
            "The run that pulls hardest is T1-2: without it the slope would be −8.0 °C per mm (95 %"
                + " interval −14.0 to −2.0).",
            "Whether the line bends is not settled: a straight one is not contradicted.",
            "Beside the other rings in one line: −6.0 °C per mm (95 % interval −13.0 to 1.0); what"
                + " the rings have in common makes the variance of this slope 2.35 times as large"
                + " (variance inflation factor).",
            "Hole error and the air temperature of a build's burns have a correlation of −0.62: they"
                + " cannot be told apart well.",
            "A study like this one would find a slope of 6.0 °C per mm, up or down, in 4 cases of"
                + " 5; a smaller one more rarely.");
  }

  @Test
  void whatWasNotCheckedIsNotSaid() {
    EffectChecks none =
        new EffectChecks(
            Measure.NORMALISED_PEAK,
            "upper",
            0.95,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Exactness.APPROXIMATE,
            List.of(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThat(words.sentences(none)).isEmpty();
  }

  @Test
  void tooFewBuildsToDealOut() {
    EffectChecks few =
        new EffectChecks(
            Measure.NORMALISED_PEAK,
            "upper",
            0.95,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.of(new SlopePermutation(0.25, 2 / 24.0, SlopePermutation.Method.ALL)),
            Exactness.EXACT,
            List.of(),
            Optional.of(bend(2e6, 1e6, 3e6)),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThat(words.sentences(few).stream().map(it -> it.replace('\u00a0', ' ')))
        .containsExactly(
            "Dealing the hole errors out anew among the builds of each design gives a slope as"
                + " steep in 25 % of all deals (exact; with these builds it cannot be less than"
                + " 8.3 %): too few builds for this to settle anything.",
            "As holes get worse, the means of the builds bend upwards from the line. Where the truth"
                + " is straight, chance makes such a bend in 5 % of studies: a question for the next"
                + " tests. If it is real, the line is only an average.");
  }

  /** Both are under 0.1 %, and the least may not be rounded up to it. */
  @Test
  void theLeastShareIsNeverSaidToBeMoreThanTheShare() {
    assertThat(CheckWords.leastShare(0.00096)).isEqualTo("0.09\u00a0%");
    assertThat(CheckWords.leastShare(0.0003)).isEqualTo("0.03\u00a0%");
    assertThat(CheckWords.leastShare(1 / 36.0)).isEqualTo("2.8\u00a0%");
  }

  private static EffectRow slope(double estimate, double low, double high) {
    return row(EffectRow.HOLE_ERROR, estimate, low, high);
  }

  private static EffectRow bend(double estimate, double low, double high) {
    return row(EffectRow.CURVATURE, estimate, low, high);
  }

  private static EffectRow row(String term, double estimate, double low, double high) {
    return new EffectRow(
        EffectRow.Model.ALL_RINGS,
        term,
        estimate,
        1,
        4,
        new Interval(low, high),
        OptionalDouble.empty(),
        24,
        8);
  }

  private static WithoutBuild without(String build, double slope) {
    return new WithoutBuild(new Key("s", build), 0.1, slope, new Interval(slope - 1, slope + 1));
  }
}
