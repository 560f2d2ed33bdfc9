package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.compare.Fairness.Condition.Kinds;
import fairboil.analysis.compare.Fairness.Condition.Range;
import fairboil.analysis.compare.Fairness.Inseparable;
import fairboil.analysis.compare.Fairness.Tied;
import fairboil.analysis.compare.RankComparison;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.group.BoilCount;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.RankSum;
import fairboil.analysis.precision.Repeatability;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.SampleResults;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CompareWordsTest {

  private final CompareWords words = CompareWords.of(SampleResults.twoBuilds());

  @Test
  void theLowerIsNamedWithHowMuch() {
    assertThat(sentence(pair(Measure.NORMALISED_BOIL_TIME, "design", -30, -50, -10, Verdict.LOWER)))
        .isEqualTo(
            "A has a shorter normalised boil time than B, by 30 s (95 % interval 10 to 50).");
    assertThat(sentence(pair(Measure.PEAK, "design", 30, 10, 50, Verdict.HIGHER)))
        .isEqualTo("A has a higher peak than B, by 30 °C (95 % interval 10 to 50).");
  }

  @Test
  void noDifferenceIsNeverClaimed() {
    assertThat(sentence(pair(Measure.PEAK, "lid", 2, -22, 27, Verdict.NOT_SETTLED)))
        .isEqualTo(
            "Whether lid A or lid B has the higher peak is not settled: the one less the other is"
                + " 2 °C (95 % interval −22 to 27).");
  }

  /** Rounded to whole degrees, 0.3 would read like no difference at all. */
  @Test
  void theVerdictCanBeReadOffThePrintedInterval() {
    assertThat(sentence(pair(Measure.PEAK, "design", 12, 0.3, 24, Verdict.HIGHER)))
        .contains("interval 0.3 to 24.0");
  }

  @Test
  void runsThatDidNotBoilAreNotLeftOut() {
    assertThat(words.sentence(ranks(RankComparison.Unit.RUNS)).replace('\u00a0', ' '))
        .isEqualTo(
            "The water boiled in 3 of 4 runs with lid on and in 4 of 4 runs with lid off. Counting"
                + " a run that did not boil as longer than any that did, a run with lid on had the"
                + " longer boil time in 75 % of the pairs of runs that can be made. Were there no"
                + " difference, one as great would come about in 30 % of such studies: this does not"
                + " settle which takes longer.");
    assertThat(words.sentence(ranks(RankComparison.Unit.BUILDS)))
        .contains("of the pairs of runs that can be made. Judging each build by its middle run,");
    assertThat(words.sentence(ranks(RankComparison.Unit.WITHIN_BUILDS)))
        .contains("Judging each build that had both by its middle runs, were there no difference");
  }

  private static RankComparison ranks(RankComparison.Unit unit) {
    return new RankComparison(
        Measure.BOIL_TIME,
        "lid",
        "on",
        "off",
        new BoilCount(3, 1, 0),
        new BoilCount(4, 0, 0),
        unit,
        new RankSum(0.75, 0.3, RankSum.Method.EXACT));
  }

  @Test
  void scatterThatIsNotSeenMayStillBeThere() {
    Repeatability none = scatter(0, new Interval(0, 12.5));
    assertThat(ScatterWords.seen(Display.in(DisplayUnits.METRIC), none))
        .isEqualTo("not seen; up to 12 °C");
    assertThat(ScatterWords.level(none)).isEqualTo("build to build, two-wall");
    assertThat(ScatterWords.seen(Display.in(DisplayUnits.METRIC), scatter(8, new Interval(4, 20))))
        .isEqualTo("8.0 °C");
  }

  @Test
  void whatCannotBeToldApartIsSaid() {
    FairnessWords fairness = FairnessWords.of(SampleResults.twoBuilds());
    Inseparable pair =
        new Inseparable(
            "design",
            "A",
            "B",
            new Kinds("tester", 4, List.of("Ida")),
            new Kinds("tester", 4, List.of("Omar")));
    assertThat(fairness.sentence(pair))
        .startsWith("Every run of A had tester Ida, every run of B Omar: what that changes cannot");
    assertThat(FairnessWords.sentence(new Tied("build", "site")))
        .isEqualTo(
            "No two builds have any site in common: what the site changes cannot be told apart from"
                + " what the build changes. Send one build round to tell them apart.");
    assertThat(FairnessWords.sentence(new Tied("build", "ambient")))
        .startsWith("No two builds have any air temperature in common")
        .doesNotContain("round");
    assertThat(fairness.values(new Range("ambient", 3, Dimension.TEMPERATURE, -8.2, 27.6), 4))
        .isEqualTo("−8 to 28 °C (1 not told)");
    assertThat(fairness.values(new Range("burn number", 4, Dimension.RATIO, 2, 5), 4))
        .isEqualTo("2 to 5");
  }

  private String sentence(Comparison pair) {
    return words.sentence(pair).replace('\u00a0', ' ');
  }

  private static Repeatability scatter(double sd, Interval interval) {
    return new Repeatability(
        Measure.PEAK,
        Repeatability.Level.BUILD_TO_BUILD,
        "two-wall",
        sd,
        interval,
        4,
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        20,
        5);
  }

  private static Comparison pair(
      Measure measure, String level, double difference, double low, double high, Verdict verdict) {
    return new Comparison(
        measure,
        level,
        "A",
        "B",
        difference,
        5,
        8,
        new Interval(low, high),
        0.01,
        0.02,
        Method.POOLED_BUILD_MEANS,
        verdict,
        60,
        1,
        Optional.empty());
  }
}
