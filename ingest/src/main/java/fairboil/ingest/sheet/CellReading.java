package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Unit;
import java.util.Optional;

/**
 * What became of a cell's text: a value, or a refusal in words.
 *
 * @param <T> what the cell was to be read as
 */
public sealed interface CellReading<T> {

  /**
   * The cell was understood.
   *
   * @param <T> what the cell was read as
   * @param value the value
   * @param unit the unit it was written in, for quantities
   * @param remark what a reader should know of the reading, such as "taken as about 500 mL"
   */
  record Read<T>(T value, Optional<Unit> unit, Optional<String> remark) implements CellReading<T> {}

  /**
   * The cell was not understood, or could mean two things.
   *
   * @param <T> what the cell was to be read as
   * @param problem what is wrong, a clause
   * @param remedy what to type instead, a clause
   */
  record Refused<T>(String problem, String remedy) implements CellReading<T> {}
}
