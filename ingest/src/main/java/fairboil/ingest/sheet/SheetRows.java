package fairboil.ingest.sheet;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import java.util.List;

/**
 * What a sheet holds.
 *
 * @param place the file
 * @param rows its rows, each with all required cells; unmodifiable
 * @param findings what a reader should know of it; unmodifiable
 */
public record SheetRows(Place place, List<Row> rows, List<Finding> findings) {

  /** Copies the lists. */
  public SheetRows {
    rows = List.copyOf(rows);
    findings = List.copyOf(findings);
  }
}
