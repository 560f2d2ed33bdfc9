package fairboil.ingest;

import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Row;
import java.util.List;
import java.util.Optional;

/** Whether two rows say the same, however they are written: 1 kg is 1000 g. */
final class SameCells {

  private static final double CLOSE = 1e-9;

  private SameCells() {}

  /** The first column in which two rows differ, an empty cell from a filled one too. */
  static Optional<Column<?>> difference(Row one, Row other, List<Column<?>> columns) {
    for (Column<?> column : columns) {
      if (!same(one.cell(column), other.cell(column))) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  private static boolean same(Optional<? extends Given<?>> one, Optional<? extends Given<?>> two) {
    if (one.isEmpty() || two.isEmpty()) {
      return one.isEmpty() && two.isEmpty();
    }
    return sameValue(one.get().value(), two.get().value());
  }

  /** Whether two values are the same but for rounding. */
  static boolean sameValue(Object one, Object two) {
    if (one instanceof Quantity a && two instanceof Quantity b) {
      return a.dimension() == b.dimension() && close(a.value(), b.value());
    }
    if (one instanceof Amount a && two instanceof Amount b) {
      return a.unit().equals(b.unit()) && close(a.number(), b.number());
    }
    return one.equals(two);
  }

  private static boolean close(double one, double two) {
    return Math.abs(one - two) <= CLOSE * Math.max(Math.abs(one), Math.abs(two));
  }
}
