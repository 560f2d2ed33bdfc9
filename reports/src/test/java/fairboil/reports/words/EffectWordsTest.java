package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.HoleErrorOrigin;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.Altered;
import fairboil.reports.SampleResults;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EffectWordsTest {

  private final EffectWords metric = words(DisplayUnits.METRIC, HoleErrorOrigin.AS_IT_CAME);

  @Test
  void theEffectStandsWithItsIntervalAndWhatItStandsOn() {
    assertThat(plain(metric.sentence(falling())))
        .isEqualTo(
            "Each millimetre of RMS hole error in the upper ring goes with −9.6 °C in normalised"
                + " peak (95 % interval −15.9 to −3.3; 8 builds, 32 burns).");
  }

  /** 1/16 inch is 1.5875 mm and 1 °C is 1.8 °F: −9.6 × 1.5875 × 1.8 = −27.4. */
  @Test
  void usUnitsArePerSixteenthOfAnInch() {
    assertThat(plain(words(DisplayUnits.US, HoleErrorOrigin.AS_IT_CAME).sentence(falling())))
        .startsWith("Each 1/16 inch of RMS hole error in the upper ring goes with −27 °F in");
  }

  @Test
  void whatCameByItselfIsAnAssociation() {
    assertThat(metric.answer(falling()))
        .contains("builds with worse holes have a lower normalised peak");
    assertThat(metric.origin()).contains("association").doesNotContain("effect of");
  }

  @Test
  void whatWasAssignedIsAnEffect() {
    EffectWords assigned = words(DisplayUnits.METRIC, HoleErrorOrigin.ASSIGNED);
    assertThat(assigned.answer(falling())).contains("worse holes make for a lower normalised peak");
    assertThat(assigned.origin()).contains("random order").doesNotContain("association");
  }

  @Test
  void whatWasAllowedForIsSaid() {
    EffectRow row = row(Model.AMBIENT_ADJUSTED, 8, -9_600, -15_900, -3_300);
    HoleEffect adjusted =
        new HoleEffect(
            Measure.NORMALISED_PEAK,
            "upper",
            points(8),
            List.of(row),
            Optional.of(row),
            EffectVerdict.FALLS,
            List.of());
    assertThat(metric.sentence(adjusted))
        .endsWith("8 builds, 32 burns; air temperature allowed for).");
  }

  /** Intervals of several rings must hold together, so each is wider than that of the study. */
  @Test
  void theConfidenceIsThatOfTheEffect() {
    Results sample = SampleResults.twoBuilds();
    EffectChecks checks =
        new EffectChecks(
            Measure.NORMALISED_PEAK,
            "upper",
            0.983,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            EffectChecks.Exactness.EXACT,
            List.of(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    EffectWords words = EffectWords.of(Altered.effectChecks(sample, List.of(checks)));
    assertThat(plain(words.sentence(falling()))).contains("(98.3 % interval −15.9 to −3.3;");
  }

  @Test
  void longerTimesAreLonger() {
    HoleEffect rising =
        effect(Measure.NORMALISED_BOIL_TIME, 8, 26_000, 12_000, 40_000, EffectVerdict.RISES);
    assertThat(plain(metric.answer(rising)))
        .contains("goes with +26 s in normalised boil time (95 % interval 12 to 40;")
        .contains("a longer normalised boil time");
  }

  @Test
  void anIntervalThatHoldsZeroSettlesNothing() {
    HoleEffect flat =
        effect(Measure.NORMALISED_PEAK, 8, -2_000, -9_000, 5_000, EffectVerdict.NOT_SETTLED);
    assertThat(metric.answer(flat)).contains("do not settle whether hole position matters");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|No build has both measured holes in the upper ring and a normalised peak: log the"
            + " flame, and measure the holes, of at least 4.",
        "1|1 build: no line can be drawn through 1 point; drill at least 3 more.",
        "2|2 builds: no line through 2 points can be tested; drill at least 2 more."
      })
  void tooFewBuildsAreSaidInWords(int builds, String sentence) {
    HoleEffect few = without(points(builds), EffectVerdict.TOO_FEW_BUILDS);
    assertThat(metric.sentence(few)).isEqualTo(sentence);
    assertThat(metric.answer(few)).isEqualTo(sentence);
  }

  @Test
  void equalHolesShowNothing() {
    assertThat(metric.sentence(without(points(5), EffectVerdict.NO_SPREAD)))
        .startsWith("All 5 builds have the same RMS hole error in the upper ring");
  }

  @Test
  void theNaiveFitIsNamedAsNoResult() {
    assertThat(metric.naive(falling())).isEmpty();
    EffectRow naive = row(Model.BURN_LEVEL, 8, -9_600, -12_000, -7_200);
    HoleEffect both =
        new HoleEffect(
            Measure.NORMALISED_PEAK,
            "upper",
            points(8),
            List.of(naive),
            Optional.empty(),
            EffectVerdict.NOT_SETTLED,
            List.of());
    assertThat(metric.naive(both).orElseThrow())
        .contains("−12.0 to −7.2 °C per mm")
        .contains("no result");
  }

  private static HoleEffect falling() {
    return effect(Measure.NORMALISED_PEAK, 8, -9_600, -15_900, -3_300, EffectVerdict.FALLS);
  }

  private static HoleEffect effect(
      Measure response, int builds, double slope, double low, double high, EffectVerdict verdict) {
    EffectRow row = row(Model.BUILD_MEANS, builds, slope, low, high);
    return new HoleEffect(
        response, "upper", points(builds), List.of(row), Optional.of(row), verdict, List.of());
  }

  private static EffectRow row(Model model, int builds, double slope, double low, double high) {
    return new EffectRow(
        model,
        EffectRow.HOLE_ERROR,
        slope,
        1,
        builds - 2,
        new Interval(low, high),
        OptionalDouble.empty(),
        4 * builds,
        builds);
  }

  private static HoleEffect without(List<BuildPoint> points, EffectVerdict verdict) {
    return new HoleEffect(
        Measure.NORMALISED_PEAK, "upper", points, List.of(), Optional.empty(), verdict, List.of());
  }

  private static List<BuildPoint> points(int builds) {
    return IntStream.range(0, builds)
        .mapToObj(
            i ->
                new BuildPoint(
                    new Key("s", "B" + i), Optional.empty(), 0.001, new double[] {700, 710}))
        .toList();
  }

  private static EffectWords words(DisplayUnits units, HoleErrorOrigin origin) {
    Results sample = SampleResults.twoBuilds();
    Row settings =
        Row.at(Place.of("study.csv"))
            .put(Settings.SHOW_UNITS, units)
            .put(Settings.HOLE_ERROR_WAS, origin)
            .build();
    return EffectWords.of(Altered.settings(sample, settings));
  }

  private static String plain(String sentence) {
    return sentence.replace('\u00a0', ' ');
  }
}
