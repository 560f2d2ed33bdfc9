package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;

/**
 * The units that people write, each with its conversion to the unit in which its {@link Dimension}
 * is held: {@code held = written × factor + offset}.
 *
 * <p>Factors are those of NIST Special Publication 811 (2008), appendix B.8, exact where they are
 * defined: the pound of 0.453 592 37 kg, the inch of 25.4 mm, the US gallon of 231 cubic inches
 * with its parts, the Btu of the International Table. Gallon, quart, pint, cup and fluid ounce are
 * the US measures.
 */
public enum Unit {
  CELSIUS("°C", Dimension.TEMPERATURE, 1, 0),
  FAHRENHEIT("°F", Dimension.TEMPERATURE, 5.0 / 9.0, -160.0 / 9.0),
  KELVIN("K", Dimension.TEMPERATURE, 1, -273.15),

  KILOGRAM("kg", Dimension.MASS, 1),
  GRAM("g", Dimension.MASS, 1e-3),
  MILLIGRAM("mg", Dimension.MASS, 1e-6),
  POUND("lb", Dimension.MASS, 0.45359237),
  OUNCE("oz", Dimension.MASS, 0.45359237 / 16),

  LITRE("L", Dimension.VOLUME, 1e-3),
  MILLILITRE("mL", Dimension.VOLUME, 1e-6),
  CUBIC_METRE("m³", Dimension.VOLUME, 1),
  US_GALLON("gal", Dimension.VOLUME, 3.785411784e-3),
  US_QUART("qt", Dimension.VOLUME, 3.785411784e-3 / 4),
  US_PINT("pt", Dimension.VOLUME, 3.785411784e-3 / 8),
  US_CUP("cup", Dimension.VOLUME, 3.785411784e-3 / 16),
  US_FLUID_OUNCE("fl oz", Dimension.VOLUME, 3.785411784e-3 / 128),
  TABLESPOON("tbsp", Dimension.VOLUME, 3.785411784e-3 / 256),
  TEASPOON("tsp", Dimension.VOLUME, 3.785411784e-3 / 768),

  METRE("m", Dimension.LENGTH, 1),
  CENTIMETRE("cm", Dimension.LENGTH, 1e-2),
  MILLIMETRE("mm", Dimension.LENGTH, 1e-3),
  KILOMETRE("km", Dimension.LENGTH, 1e3),
  INCH("in", Dimension.LENGTH, 0.0254),
  FOOT("ft", Dimension.LENGTH, 0.3048),
  YARD("yd", Dimension.LENGTH, 0.9144),
  MILE("mi", Dimension.LENGTH, 1609.344),

  SQUARE_METRE("m²", Dimension.AREA, 1),
  SQUARE_CENTIMETRE("cm²", Dimension.AREA, 1e-4),
  SQUARE_MILLIMETRE("mm²", Dimension.AREA, 1e-6),
  SQUARE_INCH("in²", Dimension.AREA, 0.0254 * 0.0254),

  SECOND("s", Dimension.DURATION, 1),
  MILLISECOND("ms", Dimension.DURATION, 1e-3),
  MICROSECOND("µs", Dimension.DURATION, 1e-6),
  MINUTE("min", Dimension.DURATION, 60),
  HOUR("h", Dimension.DURATION, 3600),
  DAY("d", Dimension.DURATION, 86400),

  PASCAL("Pa", Dimension.PRESSURE, 1),
  HECTOPASCAL("hPa", Dimension.PRESSURE, 100),
  KILOPASCAL("kPa", Dimension.PRESSURE, 1000),
  BAR("bar", Dimension.PRESSURE, 1e5),
  MILLIBAR("mbar", Dimension.PRESSURE, 100),
  ATMOSPHERE("atm", Dimension.PRESSURE, 101325),
  INCH_OF_MERCURY("inHg", Dimension.PRESSURE, 3386.389),
  MILLIMETRE_OF_MERCURY("mmHg", Dimension.PRESSURE, 133.3224),
  POUND_PER_SQUARE_INCH("psi", Dimension.PRESSURE, 6894.757),

  RADIAN("rad", Dimension.ANGLE, 1),
  DEGREE("°", Dimension.ANGLE, Math.PI / 180),

  METRE_PER_SECOND("m/s", Dimension.SPEED, 1),
  KILOMETRE_PER_HOUR("km/h", Dimension.SPEED, 1 / 3.6),
  MILE_PER_HOUR("mph", Dimension.SPEED, 0.44704),
  KNOT("kn", Dimension.SPEED, 1852.0 / 3600),
  FOOT_PER_SECOND("ft/s", Dimension.SPEED, 0.3048),

  WATT("W", Dimension.POWER, 1),
  KILOWATT("kW", Dimension.POWER, 1e3),
  BTU_PER_HOUR("Btu/h", Dimension.POWER, 1055.05585262 / 3600),

  JOULE("J", Dimension.ENERGY, 1),
  KILOJOULE("kJ", Dimension.ENERGY, 1e3),
  MEGAJOULE("MJ", Dimension.ENERGY, 1e6),
  KILOWATT_HOUR("kWh", Dimension.ENERGY, 3.6e6),
  BTU("Btu", Dimension.ENERGY, 1055.05585262),

  JOULE_PER_KILOGRAM("J/kg", Dimension.SPECIFIC_ENERGY, 1),
  KILOJOULE_PER_KILOGRAM("kJ/kg", Dimension.SPECIFIC_ENERGY, 1e3),
  MEGAJOULE_PER_KILOGRAM("MJ/kg", Dimension.SPECIFIC_ENERGY, 1e6),
  KILOWATT_HOUR_PER_KILOGRAM("kWh/kg", Dimension.SPECIFIC_ENERGY, 3.6e6),
  BTU_PER_POUND("Btu/lb", Dimension.SPECIFIC_ENERGY, 2326),

  WATT_PER_KELVIN("W/K", Dimension.CONDUCTANCE, 1),
  BTU_PER_HOUR_FAHRENHEIT("Btu/(h °F)", Dimension.CONDUCTANCE, 1055.05585262 / 3600 * 1.8),

  KILOGRAM_PER_SECOND("kg/s", Dimension.MASS_RATE, 1),
  GRAM_PER_MINUTE("g/min", Dimension.MASS_RATE, 1e-3 / 60),
  OUNCE_PER_MINUTE("oz/min", Dimension.MASS_RATE, 0.45359237 / 16 / 60),

  VOLT("V", Dimension.VOLTAGE, 1),
  MILLIVOLT("mV", Dimension.VOLTAGE, 1e-3),
  MICROVOLT("µV", Dimension.VOLTAGE, 1e-6),

  FRACTION("1", Dimension.RATIO, 1),
  PERCENT("%", Dimension.RATIO, 1e-2);

  private final String symbol;
  private final Dimension dimension;
  private final double factor;
  private final double offset;

  Unit(String symbol, Dimension dimension, double factor) {
    this(symbol, dimension, factor, 0);
  }

  Unit(String symbol, Dimension dimension, double factor, double offset) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.factor = factor;
    this.offset = offset;
  }

  /** The symbol that people see. */
  public String symbol() {
    return symbol;
  }

  /** What the unit measures; for a unit of temperature, a point on the scale. */
  public Dimension dimension() {
    return dimension;
  }

  /** Whether a value written in this unit can be a value of that dimension, point or difference. */
  public boolean measures(Dimension wanted) {
    return dimension == wanted || dimension.ofDifference() == wanted;
  }

  /**
   * Converts a written number to the unit in which {@code as} is held.
   *
   * @param written the number as written in this unit
   * @param as the dimension wanted: for a temperature unit, point or difference
   * @throws IllegalArgumentException if this unit does not measure {@code as}
   */
  public double toHeld(double written, Dimension as) {
    return written * factor + offsetFor(as);
  }

  /**
   * Converts a held value to a number in this unit: the inverse of {@link #toHeld}.
   *
   * @throws IllegalArgumentException if this unit does not measure {@code as}
   */
  public double fromHeld(double held, Dimension as) {
    return (held - offsetFor(as)) / factor;
  }

  /** How many of the other unit, of the same dimension, one of this unit is as a difference. */
  double ratioTo(Unit other) {
    return this == other ? 1 : factor / other.factor;
  }

  private double offsetFor(Dimension as) {
    if (!measures(as)) {
      throw new IllegalArgumentException(symbol + " does not measure " + as);
    }
    return as == dimension ? offset : 0;
  }
}
