package fairboil.ingest.grid.workbook;

import fairboil.ingest.grid.UnreadableException;
import java.util.List;

/** Takes the rows of a tab, in order. */
@FunctionalInterface
interface RowSink {

  /**
   * Takes a row.
   *
   * @param line the row, from 1
   * @param cells its cells, stripped; the last is not empty, and there is none in a blank row
   * @throws UnreadableException if there are too many
   */
  void row(int line, List<String> cells) throws UnreadableException;
}
