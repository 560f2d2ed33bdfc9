package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Reading;

/**
 * Reads the text of one cell, from the cell and its column alone.
 *
 * @param <T> what the cell is read as
 */
@FunctionalInterface
interface CellReader<T> {

  /**
   * Reads a cell.
   *
   * @param text the cell's text, trimmed, not empty
   * @param context what is known besides
   */
  Reading<T> read(String text, CellContext context);
}
