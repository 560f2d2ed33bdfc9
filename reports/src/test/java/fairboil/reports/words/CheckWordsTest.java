package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.EffectChecks.Exactness;
import fairboil.analysis.effect.EffectChecks.WithoutBuild;
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
            Optional.empty(),
            OptionalDouble.of(6_000),
            Optional.empty(),
            Optional.empty());
    assertThat(words.sentences(checks).stream().map(it -> it.replace('\u00a0', ' ')))
        .containsExactly(
            "Leaving out one build at a time, the slope lies between −12.0 (without T1) and −7.0"
                + " °C per mm (without T2).",
            "The median of the slopes between pairs of builds, which no single build can drag, is"
                + " −9.0 °C per mm (96 % interval −15.0 to −3.0).",
            "Dealing the hole errors out anew among the builds of each design gives a slope as"
                + " steep in fewer than 0.1 % of all deals.",
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
            Optional.empty());
    assertThat(words.sentences(none)).isEmpty();
  }

  private static WithoutBuild without(String build, double slope) {
    return new WithoutBuild(new Key("s", build), 0.1, slope, new Interval(slope - 1, slope + 1));
  }
}
