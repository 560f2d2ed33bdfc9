package fairboil.reports.table;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.table.ClaimTable.ClaimRow;
import fairboil.reports.words.ClaimWords;
import fairboil.reports.words.Display;
import java.util.List;
import java.util.function.Supplier;

/** All result tables of a report. */
public final class ResultTables {

  private ResultTables() {}

  /**
   * A table that can be filled in.
   *
   * @param schema what it is
   * @param filled fills it in
   */
  public record Part(TableSchema<?> schema, Supplier<ResultTable> filled) {

    private static <R> Part of(TableSchema<R> schema, Supplier<List<R>> rows) {
      return new Part(schema, () -> schema.of(rows.get()));
    }

    /** Its name in the report's folder. */
    public String file() {
      return "tables/" + schema.file();
    }
  }

  /** The tables of the results, in the order in which people read them. */
  public static List<ResultTable> of(Results results) {
    return parts(results).stream().map(part -> part.filled().get()).toList();
  }

  /** The same tables, each to be filled in by itself. */
  public static List<Part> parts(Results results) {
    return List.of(
        Part.of(RunsTable.SCHEMA, results::runs),
        Part.of(BuildsTable.SCHEMA, results::builds),
        Part.of(HoleTables.HOLES, () -> HoleTables.holes(results.rings())),
        Part.of(HoleTables.HOLE_ERROR, results::rings),
        Part.of(EffectTable.SCHEMA, () -> EffectTable.terms(results.holeEffects())),
        Part.of(
            ComparisonTable.SCHEMA,
            () -> ComparisonTable.pairs(results.comparisons(), results.rankComparisons())),
        Part.of(RepeatabilityTable.SCHEMA, results::repeatability),
        Part.of(VariationTable.SCHEMA, results::repeatability),
        Part.of(SiteTable.SCHEMA, () -> SiteTable.rows(results.precision().rounds())),
        Part.of(ProtocolTable.SCHEMA, results::protocol),
        Part.of(ClaimTable.SCHEMA, () -> claims(results)),
        Part.of(
            FindingTable.SCHEMA, () -> FindingTable.rows(results.findings(), display(results))));
  }

  private static Display display(Results results) {
    return Display.in(results.study().settings().get(Settings.SHOW_UNITS));
  }

  private static List<ClaimRow> claims(Results results) {
    ClaimWords words = ClaimWords.of(results);
    return results.claims().stream()
        .map((ClaimResult claim) -> new ClaimRow(claim, words.wording(claim)))
        .toList();
  }
}
