package fairboil.analysis.water;

/**
 * The saturation line of water: boiling point and saturation pressure.
 *
 * <p>Source: IAPWS R7-97(2012), "IAPWS Industrial Formulation 1997", region 4, equations (29) to
 * (31), coefficients of table 34. Valid from 273.15 K to 647.096 K; here in °C and Pa.
 */
public final class Saturation {

  /** Lowest temperature of the formulation, °C. */
  public static final double MIN_CELSIUS = 0;

  /** Highest temperature of the formulation, the critical point, °C. */
  public static final double MAX_CELSIUS = 373.946;

  private static final double MIN_PASCALS = 611.213;
  private static final double MAX_PASCALS = 22.064e6;
  private static final double ZERO_CELSIUS = 273.15;
  private static final double N1 = 0.11670521452767e4;
  private static final double N2 = -0.72421316703206e6;
  private static final double N3 = -0.17073846940092e2;
  private static final double N4 = 0.12020824702470e5;
  private static final double N5 = -0.32325550322333e7;
  private static final double N6 = 0.14915108613530e2;
  private static final double N7 = -0.48232657361591e4;
  private static final double N8 = 0.40511340542057e6;
  private static final double N9 = -0.23855557567849e0;
  private static final double N10 = 0.65017534844798e3;

  private Saturation() {}

  /**
   * The pressure at which water boils at a temperature, in Pa.
   *
   * @param celsius from {@link #MIN_CELSIUS} to {@link #MAX_CELSIUS}
   * @throws IllegalArgumentException outside that range
   */
  public static double pressure(double celsius) {
    if (!(celsius >= MIN_CELSIUS && celsius <= MAX_CELSIUS)) {
      throw new IllegalArgumentException("no saturation pressure at " + celsius + " °C");
    }
    double kelvin = celsius + ZERO_CELSIUS;
    double theta = kelvin + N9 / (kelvin - N10);
    double a = theta * theta + N1 * theta + N2;
    double b = N3 * theta * theta + N4 * theta + N5;
    double c = N6 * theta * theta + N7 * theta + N8;
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    return root * root * root * root * 1e6;
  }

  /**
   * The temperature at which water boils under a pressure, in °C.
   *
   * @param pascals from 611.213 Pa to 22.064 MPa
   * @throws IllegalArgumentException outside that range
   */
  public static double temperature(double pascals) {
    if (!(pascals >= MIN_PASCALS && pascals <= MAX_PASCALS)) {
      throw new IllegalArgumentException("no boiling point at " + pascals + " Pa");
    }
    double beta = Math.sqrt(Math.sqrt(pascals * 1e-6));
    double e = beta * beta + N3 * beta + N6;
    double f = N1 * beta * beta + N4 * beta + N7;
    double g = N2 * beta * beta + N5 * beta + N8;
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = N10 + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2 - ZERO_CELSIUS;
  }

  /** How fast the boiling point rises with pressure, in K/Pa, by central difference. */
  public static double temperaturePerPascal(double pascals) {
    double step = pascals * 1e-4;
    return (temperature(pascals + step) - temperature(pascals - step)) / (2 * step);
  }
}
