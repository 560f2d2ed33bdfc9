package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Reading;
import fairboil.ingest.quantity.Unit;
import java.util.Optional;

/**
 * Reads the text of one cell, from the cell and its header's unit alone.
 *
 * @param <T> what the cell is read as
 */
@FunctionalInterface
interface CellReader<T> {

  /**
   * Reads a cell.
   *
   * @param text the cell's text, trimmed, not empty
   * @param headerUnit the unit in the column's header, if any; a unit in the cell wins
   */
  Reading<T> read(String text, Optional<Unit> headerUnit);
}
