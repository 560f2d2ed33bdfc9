package fairboil.ingest.sheet;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import java.util.List;

/**
 * What a sheet holds.
 *
 * @param place the file
 * @param rows its rows, each with all required cells; unmodifiable
 * @param aside rows that were set aside for want of a required cell; unmodifiable
 * @param findings what a reader should know of it; unmodifiable
 */
public record SheetRows(Place place, List<Row> rows, List<Row> aside, List<Finding> findings) {

  /** Copies the lists. */
  public SheetRows {
    rows = List.copyOf(rows);
    aside = List.copyOf(aside);
    findings = List.copyOf(findings);
  }
}
