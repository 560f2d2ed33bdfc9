package fairboil.ingest.sheet;

import fairboil.ingest.quantity.DecimalMark;
import fairboil.ingest.quantity.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * What is known of a cell besides its text.
 *
 * @param unit the unit in the column's header, if any; a unit in the cell wins
 * @param mark what the file says of decimal marks
 */
record CellContext(Optional<Unit> unit, DecimalMark mark) {

  CellContext {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(mark, "mark");
  }
}
