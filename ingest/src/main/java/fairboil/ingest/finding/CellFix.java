package fairboil.ingest.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Cells to type into a row that a sheet already has.
 *
 * @param row the row: a file and a line of it
 * @param cells column name to cell, in the order to write them; unmodifiable
 */
public record CellFix(Place row, Map<String, Argument> cells) implements Fix {

  /**
   * Copies the cells, keeping their order.
   *
   * @throws IllegalArgumentException if the place names no line
   */
  public CellFix {
    if (row.line().isEmpty()) {
      throw new IllegalArgumentException("which row? " + row);
    }
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  @Override
  public String sheet() {
    return row.file();
  }

  @Override
  public CellFix toSheet(String name) {
    return new CellFix(new Place(name, row.line(), row.column()), cells);
  }

  @Override
  public CellFix in(String folder) {
    return new CellFix(row.in(folder), cells);
  }
}
