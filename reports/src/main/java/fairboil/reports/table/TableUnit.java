package fairboil.reports.table;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Unit;

/** The units in which tables hold their numbers, whatever units people read on the page. */
enum TableUnit {
  NONE("", "", 1),
  CELSIUS("C", "°C", 1),
  SECOND("s", "s", 1),
  PER_SECOND("per_s", "1/s", 1),
  WATT("W", "W", 1),
  WATT_PER_KELVIN("W_per_K", "W/K", 1),
  KILOPASCAL("kPa", "kPa", Unit.KILOPASCAL),
  KILOGRAM("kg", "kg", 1),
  GRAM_PER_MINUTE("g_per_min", "g/min", Unit.GRAM_PER_MINUTE),
  MILLIMETRE("mm", "mm", Unit.MILLIMETRE),
  SQUARE_MILLIMETRE("mm2", "mm²", Unit.SQUARE_MILLIMETRE),
  DEGREE("deg", "°", Unit.DEGREE),
  CELSIUS_PER_MILLIMETRE("C_per_mm", "°C/mm", Unit.MILLIMETRE.toHeld(1, Dimension.LENGTH)),
  SECOND_PER_MILLIMETRE("s_per_mm", "s/mm", Unit.MILLIMETRE.toHeld(1, Dimension.LENGTH));

  private final String suffix;
  private final String symbol;
  private final double perHeld;

  TableUnit(String suffix, String symbol, double perHeld) {
    this.suffix = suffix;
    this.symbol = symbol;
    this.perHeld = perHeld;
  }

  TableUnit(String suffix, String symbol, Unit unit) {
    this(suffix, symbol, unit.fromHeld(1, unit.dimension()));
  }

  /** The unit in which tables hold values, and differences of values, of that dimension. */
  static TableUnit of(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> CELSIUS;
      case DURATION -> SECOND;
      case RATE -> PER_SECOND;
      case POWER -> WATT;
      case CONDUCTANCE -> WATT_PER_KELVIN;
      case PRESSURE -> KILOPASCAL;
      case MASS -> KILOGRAM;
      case MASS_RATE -> GRAM_PER_MINUTE;
      case LENGTH -> MILLIMETRE;
      case AREA -> SQUARE_MILLIMETRE;
      case ANGLE -> DEGREE;
      case TEMPERATURE_DIFFERENCE_PER_LENGTH -> CELSIUS_PER_MILLIMETRE;
      case DURATION_PER_LENGTH -> SECOND_PER_MILLIMETRE;
      case RATIO -> NONE;
      case VOLUME, SPEED, ENERGY, SPECIFIC_ENERGY, VOLTAGE ->
          throw new IllegalArgumentException("no table holds a " + dimension);
    };
  }

  /** A name with this unit's ending, such as {@code peak_C}. */
  String name(String base) {
    return suffix.isEmpty() ? base : base + "_" + suffix;
  }

  /** The symbol that people see. */
  String symbol() {
    return symbol;
  }

  /** A held value, or a held difference, in this unit. */
  double of(double held) {
    return held * perHeld;
  }
}
