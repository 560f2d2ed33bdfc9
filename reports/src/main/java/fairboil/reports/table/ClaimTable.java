package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.sheet.ClaimsSheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code claims.csv}: each claim with its verdict. */
final class ClaimTable {

  /** A claim, and its verdict in words. */
  record ClaimRow(ClaimResult claim, String wording) {

    private String measure() {
      return claim
          .measure()
          .map(Measure::label)
          .orElseGet(() -> claim.claim().row().value(ClaimsSheet.MEASURE).orElse(""));
    }

    private OptionalDouble estimate() {
      return claim
          .estimate()
          .map(estimate -> OptionalDouble.of(inTable(estimate.value())))
          .orElse(OptionalDouble.empty());
    }

    private Optional<Interval> interval() {
      return claim
          .estimate()
          .map(ClaimResult.Estimate::interval)
          .map(held -> new Interval(inTable(held.low()), inTable(held.high())));
    }

    private double inTable(double held) {
      return claim
          .measure()
          .map(measure -> TableUnit.of(measure.dimension()).of(held))
          .orElse(held);
    }
  }

  static final TableSchema<ClaimRow> SCHEMA =
      new TableSchema<>(
          "claims.csv",
          "a claim",
          List.of(
              text("claim", "short name of the claim", row -> row.claim().claim().key().name()),
              text(
                  "text",
                  "the sentence that was tested",
                  row -> row.claim().claim().row().value(ClaimsSheet.TEXT).orElse("")),
              text("measure", "measure that it is about", ClaimRow::measure),
              text(
                  "verdict",
                  "supported, contradicted, not settled or cannot be tested here",
                  row -> row.claim().verdict().label()),
              number(
                  "estimate",
                  TableUnit.NONE,
                  "what was found, in °C, s, W, kg, a share, or °C or s per mm of hole error",
                  ClaimRow::estimate),
              number(
                  "ci_low",
                  TableUnit.NONE,
                  "lower end of its interval",
                  row -> Ends.low(row.interval())),
              number(
                  "ci_high",
                  TableUnit.NONE,
                  "upper end of its interval",
                  row -> Ends.high(row.interval())),
              number(
                  "confidence",
                  TableUnit.NONE,
                  "confidence of that interval, so that all claims together have that of the study",
                  row -> OptionalDouble.of(row.claim().confidence())),
              text("wording", "the verdict in words", ClaimRow::wording)));

  private ClaimTable() {}
}
