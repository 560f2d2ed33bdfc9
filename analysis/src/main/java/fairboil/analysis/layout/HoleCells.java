package fairboil.analysis.layout;

import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Hole;
import java.util.OptionalDouble;

/** The quantities in the row of a hole. */
final class HoleCells {

  private HoleCells() {}

  static boolean has(Hole hole, Column<Quantity> column) {
    return hole.row().value(column).isPresent();
  }

  static double get(Hole hole, Column<Quantity> column) {
    return hole.row().get(column).value();
  }

  static OptionalDouble find(Hole hole, Column<Quantity> column) {
    return has(hole, column) ? OptionalDouble.of(get(hole, column)) : OptionalDouble.empty();
  }
}
