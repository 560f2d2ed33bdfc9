package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import java.util.Objects;
import java.util.Optional;

/**
 * A number as a person wrote it, with the unit that was beside it: not yet converted, because only
 * the reader of it knows whether {@code 20 °F} is a temperature or a difference of temperatures.
 *
 * @param number the number as written, finite
 * @param resolution the size of one step of the last digit written, in the unit as written; 0 where
 *     it is not known
 * @param unit the unit as written, or empty for a bare number
 */
public record Amount(double number, double resolution, Optional<Unit> unit) {

  /** Checks that the number is finite and the resolution is not negative. */
  public Amount {
    Objects.requireNonNull(unit, "unit");
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("not a finite number: " + number);
    }
    if (!(resolution >= 0)) {
      throw new IllegalArgumentException("not a resolution: " + resolution);
    }
  }

  /** The same amount; a bare number takes the given unit, a cell's own unit wins. */
  public Amount orIn(Unit fallback) {
    return unit.isPresent() ? this : new Amount(number, resolution, Optional.of(fallback));
  }

  /**
   * This amount as a quantity of the given dimension, or empty if its unit does not measure it. A
   * bare number is a quantity only of {@link Dimension#RATIO}.
   */
  public Optional<Quantity> as(Dimension dimension) {
    if (unit.isEmpty()) {
      return dimension == Dimension.RATIO
          ? Optional.of(new Quantity(number, resolution, dimension))
          : Optional.empty();
    }
    Unit written = unit.get();
    if (!written.measures(dimension)) {
      return Optional.empty();
    }
    double step = written.toHeld(resolution, written.dimension().ofDifference());
    return Optional.of(new Quantity(written.toHeld(number, dimension), step, dimension));
  }
}
