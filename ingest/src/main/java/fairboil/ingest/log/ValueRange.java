package fairboil.ingest.log;

import fairboil.ingest.quantity.Unit;
import java.util.Optional;

/** The lowest and the highest number of a column, and what they look like. */
final class ValueRange {

  private long count;
  private double lowest = Double.POSITIVE_INFINITY;
  private double highest = Double.NEGATIVE_INFINITY;

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

  /** {@code 19.1 to 99.3}. */
  String words() {
    return count == 0 ? "no number" : Spell.number(lowest) + " to " + Spell.number(highest);
  }

  /**
   * The unit that the range looks like, where water that boils, or a fire, gives it away. Never
   * used to convert: only to fill in a row that a person may paste.
   */
  Optional<Unit> likelyUnit() {
    if (lowest >= 250 && highest <= 400) {
      return Optional.of(Unit.KELVIN);
    }
    if (lowest < 60 && highest >= 90 && highest <= 106) {
      return Optional.of(Unit.CELSIUS);
    }
    boolean boils = lowest >= 20 && highest >= 190 && highest <= 216;
    boolean burns = lowest >= 20 && highest > 1150 && highest <= 2200;
    return boils || burns ? Optional.of(Unit.FAHRENHEIT) : Optional.empty();
  }

  /** {@code flame} or {@code water} where the range can only be one of them, else empty. */
  String likelyRole() {
    if (highest > 420) {
      return "flame";
    }
    return likelyUnit().isPresent() ? "water" : "";
  }
}
