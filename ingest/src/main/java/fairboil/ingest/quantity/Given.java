package fairboil.ingest.quantity;

import fairboil.ingest.finding.Place;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A cell that a person filled in: what it was read as, how it was written and where it stands, so
 * that anything later can name the cell it complains of.
 *
 * @param <T> what the cell was read as
 * @param value the value read
 * @param written the cell's text, trimmed
 * @param unit the unit the value was written in (its own, else its header's), for quantities
 * @param place the cell
 */
public record Given<T>(T value, String written, Optional<Unit> unit, Place place) {

  /** Checks that all parts are there. */
  public Given {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(written, "written");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(place, "place");
  }

  /** A value without a unit, written as {@code written}. */
  public static <T> Given<T> of(T value, String written, Place place) {
    return new Given<>(value, written, Optional.empty(), place);
  }

  /** The same cell, its file named from outside the folder that holds it. */
  public Given<T> in(String folder) {
    return new Given<>(value, written, unit, place.in(folder));
  }

  /** The same cell, read as something else. */
  public <U> Given<U> map(Function<? super T, ? extends U> reading) {
    return new Given<>(reading.apply(value), written, unit, place);
  }
}
