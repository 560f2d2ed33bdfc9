package fairboil.ingest.grid;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.DecimalMark;
import java.util.List;
import java.util.Objects;

/**
 * A whole sheet as rows of cells, whatever kind of file it came from; blank lines and comments are
 * left out.
 *
 * @param place the file (in a workbook: the workbook and tab)
 * @param rows the rows, the header among them; unmodifiable
 * @param mark the decimal mark of its numbers
 * @param columns how findings name its columns
 * @param blanks how many blank lines were left out
 * @param comments how many comment lines were left out
 * @param findings what a reader should know of how it was read; unmodifiable
 */
public record Grid(
    Place place,
    List<GridRow> rows,
    DecimalMark mark,
    ColumnNames columns,
    int blanks,
    int comments,
    List<Finding> findings) {

  /** Copies the lists. */
  public Grid {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(mark, "mark");
    Objects.requireNonNull(columns, "columns");
    rows = List.copyOf(rows);
    findings = List.copyOf(findings);
  }
}
