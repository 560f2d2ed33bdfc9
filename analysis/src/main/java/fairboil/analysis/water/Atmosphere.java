package fairboil.analysis.water;

/**
 * Air pressure with altitude in the standard atmosphere.
 *
 * <p>Source: ISO 2533:1975, Standard Atmosphere, troposphere: a sea-level temperature of 288.15 K
 * that falls by 6.5 K per geopotential kilometre; geometric altitude is turned into geopotential
 * with the nominal Earth radius 6,356,766 m.
 */
public final class Atmosphere {

  /** Standard pressure at sea level, Pa. */
  public static final double SEA_LEVEL_PASCALS = 101_325;

  /** Lowest altitude answered for, m. */
  public static final double MIN_METRES = -500;

  /** Highest altitude answered for, m: above it nobody boils water on a camp stove. */
  public static final double MAX_METRES = 9_000;

  private static final double EARTH_RADIUS = 6_356_766;
  private static final double SEA_LEVEL_KELVIN = 288.15;
  private static final double LAPSE = 0.0065;
  private static final double GRAVITY = 9.80665;
  private static final double GAS_CONSTANT = 287.05287;
  private static final double EXPONENT = GRAVITY / (GAS_CONSTANT * LAPSE);

  private Atmosphere() {}

  /**
   * Standard pressure at an altitude, in Pa.
   *
   * @param metres geometric altitude above sea level, from {@link #MIN_METRES} to {@link
   *     #MAX_METRES}
   * @throws IllegalArgumentException outside that range
   */
  public static double pressure(double metres) {
    return reduce(SEA_LEVEL_PASCALS, metres);
  }

  /**
   * The station pressure that belongs to a pressure reduced to sea level, as forecasts give it.
   *
   * @param seaLevelPascals the pressure reduced to sea level, Pa
   * @param metres geometric altitude of the station, m
   * @throws IllegalArgumentException for an altitude out of range
   */
  public static double reduce(double seaLevelPascals, double metres) {
    if (!(metres >= MIN_METRES && metres <= MAX_METRES)) {
      throw new IllegalArgumentException("no pressure at an altitude of " + metres + " m");
    }
    double geopotential = EARTH_RADIUS * metres / (EARTH_RADIUS + metres);
    return seaLevelPascals * Math.pow(1 - LAPSE * geopotential / SEA_LEVEL_KELVIN, EXPONENT);
  }

  /** How fast standard pressure falls with altitude, Pa/m: the weight of the air, negative. */
  public static double pascalsPerMetre(double metres) {
    double geopotential = EARTH_RADIUS * metres / (EARTH_RADIUS + metres);
    double kelvin = SEA_LEVEL_KELVIN - LAPSE * geopotential;
    return -pressure(metres) * GRAVITY / (GAS_CONSTANT * kelvin);
  }
}
