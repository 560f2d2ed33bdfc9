package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.quantity.Unit;
import java.util.Optional;

/** The lowest and the highest number of a column, and what they look like. */
final class ValueRange {

  private final Optional<Role> role;
  private long count;
  private double lowest = Double.POSITIVE_INFINITY;
  private double highest = Double.NEGATIVE_INFINITY;

  /**
   * No number yet.
   *
   * @param role what the column holds, if that is known
   */
  ValueRange(Optional<Role> role) {
    this.role = role;
  }

  void add(double value) {
    count++;
    lowest = Math.min(lowest, value);
    highest = Math.max(highest, value);
  }

  long count() {
    return count;
  }

  double lowest() {
    return lowest;
  }

  double highest() {
    return highest;
  }

  /** The range of the same numbers, each multiplied. */
  ValueRange times(double scale) {
    ValueRange scaled = new ValueRange(role);
    if (count > 0) {
      scaled.add(lowest * scale);
      scaled.add(highest * scale);
      scaled.count = count;
    }
    return scaled;
  }

  /** {@code 19.1 to 99.3}. */
  String words() {
    return count == 0 ? "no number" : Spell.number(lowest) + " to " + Spell.number(highest);
  }

  /** The same with the unit that it looks like, if it does: {@code 19.1 to 99.3: looks like °C}. */
  String guess() {
    return words() + likelyUnit().map(unit -> ": looks like " + unit.symbol()).orElse("");
  }

  /**
   * The unit that the range looks like, where water that boils, or a fire, gives it away. Never
   * used to convert: only to fill in a row that a person may paste.
   */
  Optional<Unit> likelyUnit() {
    boolean burns = lowest >= 20 && highest > 1150 && highest <= 2200;
    if (burns && mayBe(Role.FLAME)) {
      return Optional.of(Unit.FAHRENHEIT);
    }
    return mayBe(Role.WATER) ? unitOfWater() : Optional.empty();
  }

  private boolean mayBe(Role asked) {
    return role.isEmpty() || role.get() == asked;
  }

  private Optional<Unit> unitOfWater() {
    if (lowest >= 253 && lowest <= 318 && highest >= 358 && highest <= 378) {
      return Optional.of(Unit.KELVIN);
    }
    if (lowest < 60 && highest >= 90 && highest <= 106) {
      return Optional.of(Unit.CELSIUS);
    }
    return lowest >= 20 && highest >= 190 && highest <= 216
        ? Optional.of(Unit.FAHRENHEIT)
        : Optional.empty();
  }

  /** {@code flame} or {@code water} where the range can only be one of them, else empty. */
  String likelyRole() {
    if (highest > 420) {
      return "flame";
    }
    return likelyUnit().isPresent() ? "water" : "";
  }
}
