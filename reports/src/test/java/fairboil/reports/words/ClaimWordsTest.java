package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Selection;
import fairboil.reports.SampleResults;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ClaimWordsTest {

  private static final double INFINITY = Double.POSITIVE_INFINITY;

  private final ClaimWords words = ClaimWords.of(SampleResults.typical(DisplayUnits.METRIC));

  @Test
  void supportedIsWhollyWithin() {
    Row row = row().put(ClaimsSheet.ABOUT, new Selection.Named("two-wall")).build();
    assertThat(
            wording(
                claim(row, Verdict.SUPPORTED, 500, new Interval(480, 520), new Interval(0, 540))))
        .isEqualTo(
            "Supported: the mean boil time of two-wall is 8:20 min (95 % interval 8:00 to 8:40),"
                + " and all of that interval lies between 0 s and 9:00 min. It stands on 12 runs"
                + " of 3 builds.");
  }

  @Test
  void contradictedIsWhollyOutside() {
    Interval claimed = new Interval(-INFINITY, 420);
    assertThat(
            wording(
                claim(row().build(), Verdict.CONTRADICTED, 500, new Interval(480, 520), claimed)))
        .startsWith(
            "Contradicted: the mean boil time is 8:20 min (95 % interval 8:00 to 8:40), and none"
                + " of that interval lies at or below 7:00 min.");
  }

  @Test
  void notSettledIsNeither() {
    Interval claimed = new Interval(500, INFINITY);
    assertThat(
            wording(
                claim(row().build(), Verdict.NOT_SETTLED, 500, new Interval(480, 520), claimed)))
        .contains("only part of that interval lies at or above 8:20 min");
  }

  /** Rounded to whole degrees, 730.2 and 730 would read alike. */
  @Test
  void theVerdictCanBeReadOffThePrintedInterval() {
    ClaimResult claim =
        new ClaimResult(
            new Claim(new Key("s", "C"), row().build()),
            Optional.of(Measure.PEAK),
            Verdict.NOT_SETTLED,
            Optional.empty(),
            Optional.of(new Estimate(697.6, new Interval(665, 730.2))),
            Optional.of(new Interval(730, INFINITY)),
            0.95,
            12,
            3);
    assertThat(wording(claim))
        .contains("697.6 °C (95 % interval 665.0 to 730.2)")
        .contains("at or above 730.0 °C");
  }

  /** A difference of 20 K is 36 °F, not 68 °F (NIST SP 811, B.8). */
  @Test
  void differencesAreDifferences() {
    Row row =
        row()
            .put(ClaimsSheet.ABOUT, new Selection.Named("A"))
            .put(ClaimsSheet.AGAINST, new Selection.Named("B"))
            .build();
    ClaimResult claim =
        new ClaimResult(
            new Claim(new Key("s", "C"), row),
            Optional.of(Measure.PEAK),
            Verdict.SUPPORTED,
            Optional.empty(),
            Optional.of(new Estimate(20, new Interval(10, 30))),
            Optional.of(new Interval(0, INFINITY)),
            0.95,
            12,
            3);
    String us =
        ClaimWords.of(SampleResults.typical(DisplayUnits.US)).wording(claim).replace('\u00a0', ' ');
    assertThat(us)
        .contains("the mean peak of A, less that of B, is 36 °F (95 % interval 18 to 54)")
        .contains("at or above 0 °F");
  }

  @Test
  void whatTheClaimIsAboutIsSaid() {
    Row row =
        row()
            .put(ClaimsSheet.WHERE, new Selection.Where(Map.of("lid", "on")))
            .put(ClaimsSheet.HOLDS_FOR, HoldsFor.MOST_RUNS)
            .build();
    assertThat(
            wording(
                claim(row, Verdict.SUPPORTED, 500, new Interval(480, 520), new Interval(0, 540))))
        .contains("for 19 runs in 20, the boil time in runs with lid on is");
  }

  @Test
  void aBeadIsSaidToBeOne() {
    ClaimResult claim =
        new ClaimResult(
            new Claim(new Key("s", "C"), row().build()),
            Optional.of(Measure.STEADY_FLAME),
            Verdict.SUPPORTED,
            Optional.empty(),
            Optional.of(new Estimate(700, new Interval(690, 710))),
            Optional.of(new Interval(650, INFINITY)),
            0.95,
            12,
            3);
    assertThat(wording(claim)).contains("the mean steady flame, as a bare bead reads it, is 700");
  }

  @Test
  void whenItWasWrittenDownIsSaid() {
    ClaimResult undated =
        claim(row().build(), Verdict.SUPPORTED, 500, new Interval(480, 520), new Interval(0, 540));
    assertThat(words.written(undated))
        .isEqualTo(
            "When it was written down is not told, so it may have been chosen after seeing the"
                + " results.");
  }

  @Test
  void whatIsNotMeasuredCannotBeTested() {
    ClaimResult claim =
        new ClaimResult(
            new Claim(new Key("s", "C"), row().build()),
            Optional.empty(),
            Verdict.NOT_TESTABLE,
            Optional.of(Template.of("nothing here measures smoke").with()),
            Optional.empty(),
            Optional.empty(),
            0.95,
            0,
            0);
    assertThat(wording(claim)).isEqualTo("Cannot be tested here: nothing here measures smoke.");
  }

  private String wording(ClaimResult claim) {
    return words.wording(claim).replace('\u00a0', ' ');
  }

  private static ClaimResult claim(
      Row row, Verdict verdict, double value, Interval interval, Interval bounds) {
    return new ClaimResult(
        new Claim(new Key("s", "C"), row),
        Optional.of(Measure.BOIL_TIME),
        verdict,
        Optional.empty(),
        Optional.of(new Estimate(value, interval)),
        Optional.of(bounds),
        0.95,
        12,
        3);
  }

  private static Row.Builder row() {
    return Row.at(Place.of("claims.csv", 2))
        .put(ClaimsSheet.CLAIM, "C")
        .put(ClaimsSheet.TEXT, "a claim")
        .put(ClaimsSheet.MEASURE, "boil time")
        .put(ClaimsSheet.RELATION, Relation.AT_MOST);
  }
}
