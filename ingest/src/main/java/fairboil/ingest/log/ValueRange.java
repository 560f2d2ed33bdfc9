package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Unit;
import java.math.BigDecimal;
import java.util.Optional;

/** The lowest and the highest number of a column, and what they look like. */
final class ValueRange {

  private static final Template NO_NUMBER = Template.of("no number");
  private static final Template NUMBERS = Template.of("{number} to {number}");
  private static final Template VALUES = Template.of("{range}");
  private static final Template LOOKS_LIKE =
      Template.of("{number} to {number}, which looks like {word}");

  private final Optional<Role> role;
  private long count;
  private double lowest = Double.POSITIVE_INFINITY;
  private double highest = Double.NEGATIVE_INFINITY;
  private int decimals;

  /**
   * No number yet.
   *
   * @param role what the column holds, if that is known
   */
  ValueRange(Optional<Role> role) {
    this.role = role;
  }

  /**
   * A number more.
   *
   * @param written how many decimals it was written with; may be fewer than 0
   */
  void add(double value, int written) {
    count++;
    decimals = Math.max(decimals, written);
    if (Double.isFinite(value)) {
      lowest = Math.min(lowest, value);
      highest = Math.max(highest, value);
    }
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
      int written = decimals + decimalsOf(scale);
      scaled.add(lowest * scale, written);
      scaled.add(highest * scale, written);
      scaled.count = count;
    }
    return scaled;
  }

  /** How many decimals a factor adds to those of a number. */
  static int decimalsOf(double factor) {
    return BigDecimal.valueOf(factor).stripTrailingZeros().scale();
  }

  /** The numbers as written: {@code 19.1 to 99.3}. */
  Message numbers() {
    return isEmpty() ? NO_NUMBER.with() : NUMBERS.with(number(lowest), number(highest));
  }

  /** The values of numbers in that unit. */
  Message values(Unit unit) {
    Dimension dimension = unit.dimension();
    return isEmpty()
        ? NO_NUMBER.with()
        : VALUES.with(
            Argument.range(
                unit.toHeld(lowest, dimension),
                unit.toHeld(highest, dimension),
                uncertainty(unit),
                dimension));
  }

  /** The highest of numbers in that unit. */
  Argument highest(Unit unit) {
    return value(highest, unit);
  }

  /** A number in that unit, as fine as those of the range. */
  Argument value(double number, Unit unit) {
    Dimension dimension = unit.dimension();
    return Argument.value(unit.toHeld(number, dimension), uncertainty(unit), dimension);
  }

  // Small enough for the last decimal, and large enough for no further one, in °C and in °F.
  private double uncertainty(Unit unit) {
    double written = 4 * Math.pow(10, -Arguments.clamped(decimals));
    return unit.toHeld(written, unit.dimension()) - unit.toHeld(0, unit.dimension());
  }

  /** The numbers with the unit that they look like, if they do. */
  Message guess() {
    Optional<Unit> unit = likelyUnit();
    return unit.isEmpty() || isEmpty()
        ? numbers()
        : LOOKS_LIKE.with(number(lowest), number(highest), Argument.word(unit.get().symbol()));
  }

  private boolean isEmpty() {
    return !(lowest <= highest);
  }

  private Argument number(double value) {
    return Arguments.number(value, decimals);
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

  /** Flame or water where the range can only be one of them, else empty. */
  Optional<Role> likelyRole() {
    if (highest > 420) {
      return Optional.of(Role.FLAME);
    }
    return likelyUnit().map(unit -> Role.WATER);
  }
}
