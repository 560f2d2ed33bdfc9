package fairboil.reports.table;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult;
import fairboil.reports.table.ClaimTable.ClaimRow;
import fairboil.reports.words.ClaimWords;
import java.util.List;

/** All result tables of a report. */
public final class ResultTables {

  private ResultTables() {}

  /** The tables of the results, in the order in which people read them. */
  public static List<ResultTable> of(Results results) {
    return List.of(
        RunsTable.SCHEMA.of(results.runs()),
        BuildsTable.SCHEMA.of(results.builds()),
        HoleTables.HOLES.of(HoleTables.holes(results.rings())),
        HoleTables.HOLE_ERROR.of(results.rings()),
        EffectTable.SCHEMA.of(EffectTable.terms(results.holeEffects())),
        ComparisonTable.SCHEMA.of(
            ComparisonTable.pairs(results.comparisons(), results.rankComparisons())),
        RepeatabilityTable.SCHEMA.of(results.repeatability()),
        VariationTable.SCHEMA.of(results.repeatability()),
        SiteTable.SCHEMA.of(SiteTable.rows(results.precision().rounds())),
        ProtocolTable.SCHEMA.of(results.protocol()),
        ClaimTable.SCHEMA.of(claims(results)),
        FindingTable.SCHEMA.of(results.findings()));
  }

  private static List<ClaimRow> claims(Results results) {
    ClaimWords words = ClaimWords.of(results);
    return results.claims().stream()
        .map((ClaimResult claim) -> new ClaimRow(claim, words.wording(claim)))
        .toList();
  }
}
