package fairboil.ingest.dimension;

/**
 * The kinds of quantity that the program computes with, each with the one unit in which it is held.
 *
 * <p>A temperature and a temperature difference are different dimensions: a correction, a margin, a
 * rise or a standard deviation of 2 °F is 1.11 K, never −16.7 °C.
 */
public enum Dimension {
  /** A point on the temperature scale, held in °C. */
  TEMPERATURE("°C"),
  /** A difference between two temperatures, held in kelvins. */
  TEMPERATURE_DIFFERENCE("K"),
  /** Held in kilograms. */
  MASS("kg"),
  /** Held in cubic metres. */
  VOLUME("m³"),
  /** Held in metres. */
  LENGTH("m"),
  /** Held in square metres. */
  AREA("m²"),
  /** An elapsed time, held in seconds. */
  DURATION("s"),
  /** Held in pascals. */
  PRESSURE("Pa"),
  /** Held in radians. */
  ANGLE("rad"),
  /** Held in metres per second. */
  SPEED("m/s"),
  /** Held in watts. */
  POWER("W"),
  /** Held in joules. */
  ENERGY("J"),
  /** A heating value, held in joules per kilogram. */
  SPECIFIC_ENERGY("J/kg"),
  /** Heat lost per second and kelvin, held in watts per kelvin. */
  CONDUCTANCE("W/K"),
  /** A burning rate, held in kilograms per second. */
  MASS_RATE("kg/s"),
  /** Held in volts. */
  VOLTAGE("V"),
  /** A share or ratio, held as a fraction: 12 % is 0.12. */
  RATIO("1"),
  /** Growth of the fire, held as a fraction per second. */
  RATE("1/s"),
  /** A hole effect on a temperature, held in kelvins per metre of hole error. */
  TEMPERATURE_DIFFERENCE_PER_LENGTH("K/m"),
  /** A hole effect on a time, held in seconds per metre of hole error. */
  DURATION_PER_LENGTH("s/m");

  private final String heldIn;

  Dimension(String heldIn) {
    this.heldIn = heldIn;
  }

  /** The symbol of the unit in which values of this dimension are held. */
  public String heldIn() {
    return heldIn;
  }

  /** The dimension of a difference between two values of this one. */
  public Dimension ofDifference() {
    return this == TEMPERATURE ? TEMPERATURE_DIFFERENCE : this;
  }

  /**
   * The dimension of a change of this one with length.
   *
   * @throws IllegalArgumentException for dimensions of which no such slope is used
   */
  public Dimension perLength() {
    return switch (this) {
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> TEMPERATURE_DIFFERENCE_PER_LENGTH;
      case DURATION -> DURATION_PER_LENGTH;
      default -> throw new IllegalArgumentException("no slope of " + this + " with length is used");
    };
  }
}
