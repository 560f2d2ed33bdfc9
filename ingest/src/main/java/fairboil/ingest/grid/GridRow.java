package fairboil.ingest.grid;

import java.util.List;

/**
 * One row of cells.
 *
 * @param line the physical line (in a workbook: the row) on which it starts, from 1
 * @param cells its cells, trimmed; unmodifiable
 */
public record GridRow(int line, List<String> cells) {

  /** Copies the cells. */
  public GridRow {
    cells = List.copyOf(cells);
  }

  /** The cell at an index from 0; empty if the row ends before it. */
  public String cell(int index) {
    return index < cells.size() ? cells.get(index) : "";
  }

  /** How many cells there are up to the last that is not empty. */
  public int width() {
    int width = cells.size();
    while (width > 0 && cells.get(width - 1).isEmpty()) {
      width--;
    }
    return width;
  }
}
