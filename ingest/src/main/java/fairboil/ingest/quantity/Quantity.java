package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import java.util.Objects;

/**
 * A value with its dimension, in the unit in which that dimension is held.
 *
 * @param value the value, finite
 * @param resolution the size of one step of the last digit written, in the same unit as a
 *     difference; 0 where it is not known
 * @param dimension what it is a value of
 */
public record Quantity(double value, double resolution, Dimension dimension) {

  /** Checks that the value is finite and the resolution is not negative. */
  public Quantity {
    Objects.requireNonNull(dimension, "dimension");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite value: " + value);
    }
    if (!(resolution >= 0)) {
      throw new IllegalArgumentException("not a resolution: " + resolution);
    }
  }

  /**
   * A quantity whose resolution is not known, from a number in a unit, of that unit's dimension.
   */
  public static Quantity of(double number, Unit unit) {
    return new Quantity(unit.toHeld(number, unit.dimension()), 0, unit.dimension());
  }

  /** This quantity as a number in the given unit. */
  public double in(Unit unit) {
    return unit.fromHeld(value, dimension);
  }
}
