package fairboil.analysis.water;

/**
 * Density, enthalpy, heat capacity and latent heat of water from 0 °C to 100 °C.
 *
 * <p>Density: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, at 101.325 kPa. Enthalpy and latent
 * heat: IAPWS SR1-86(1992), "Supplementary Release on Saturation Properties of Ordinary Water
 * Substance" (W. Wagner, A. Pruß, J. Phys. Chem. Ref. Data 22 (1993) 783), with the enthalpy taken
 * from the saturation line to 101.325 kPa by (p − ps)(v − T dv/dT).
 */
public final class Water {

  /** Lowest temperature answered for, °C. */
  public static final double MIN_CELSIUS = 0;

  /** Highest temperature answered for, °C: a little above boiling at the lowest places on land. */
  public static final double MAX_CELSIUS = 105;

  private static final double ZERO_CELSIUS = 273.15;
  private static final double CRITICAL_KELVIN = 647.096;
  private static final double CRITICAL_PASCALS = 22.064e6;
  private static final double CRITICAL_DENSITY = 322;

  private Water() {}

  /**
   * Density at 101.325 kPa, in kg/m³.
   *
   * @param celsius from {@link #MIN_CELSIUS} to {@link #MAX_CELSIUS}
   * @throws IllegalArgumentException outside that range
   */
  public static double density(double celsius) {
    double t = checked(celsius);
    double top =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    return top / (1 + 16.879850e-3 * t);
  }

  /**
   * Specific enthalpy of liquid water at 101.325 kPa, in J/kg, above that at the triple point.
   *
   * @param celsius from {@link #MIN_CELSIUS} to {@link #MAX_CELSIUS}
   * @throws IllegalArgumentException outside that range
   */
  public static double enthalpy(double celsius) {
    double kelvin = checked(celsius) + ZERO_CELSIUS;
    double theta = kelvin / CRITICAL_KELVIN;
    double alpha =
        1000
            * (-1135.905627715
                - 5.65134998e-8 * Math.pow(theta, -19)
                + 2690.66631 * theta
                + 127.287297 * Math.pow(theta, 4.5)
                - 135.003439 * Math.pow(theta, 5)
                + 0.981825814 * Math.pow(theta, 54.5));
    double saturated = alpha + kelvin / liquidDensity(kelvin) * pressureSlope(kelvin);
    double volume = 1 / liquidDensity(kelvin);
    double volumeSlope = (1 / liquidDensity(kelvin + 0.1) - 1 / liquidDensity(kelvin - 0.1)) / 0.2;
    double above = Atmosphere.SEA_LEVEL_PASCALS - saturationPressure(kelvin);
    return saturated + above * (volume - kelvin * volumeSlope);
  }

  /**
   * Mean specific heat capacity between two temperatures at 101.325 kPa, in J/(kg K); at one
   * temperature if they are equal.
   *
   * @param from °C, from {@link #MIN_CELSIUS} to {@link #MAX_CELSIUS}
   * @param to °C, in the same range
   * @throws IllegalArgumentException outside that range
   */
  public static double heatCapacity(double from, double to) {
    if (Math.abs(to - from) < 0.1) {
      double middle = Math.min(Math.max((from + to) / 2, MIN_CELSIUS + 0.5), MAX_CELSIUS - 0.5);
      return enthalpy(middle + 0.5) - enthalpy(middle - 0.5);
    }
    return (enthalpy(to) - enthalpy(from)) / (to - from);
  }

  /**
   * Heat that boils away water at a temperature, in J/kg, by the Clapeyron equation.
   *
   * @param celsius from {@link #MIN_CELSIUS} to {@link #MAX_CELSIUS}
   * @throws IllegalArgumentException outside that range
   */
  public static double latentHeat(double celsius) {
    double kelvin = checked(celsius) + ZERO_CELSIUS;
    double volumeGained = 1 / vapourDensity(kelvin) - 1 / liquidDensity(kelvin);
    return kelvin * volumeGained * pressureSlope(kelvin);
  }

  private static double checked(double celsius) {
    if (!(celsius >= MIN_CELSIUS && celsius <= MAX_CELSIUS)) {
      throw new IllegalArgumentException("no liquid water at " + celsius + " °C");
    }
    return celsius;
  }

  private static double saturationPressure(double kelvin) {
    double tau = 1 - kelvin / CRITICAL_KELVIN;
    return CRITICAL_PASCALS * Math.exp(CRITICAL_KELVIN / kelvin * pressureSeries(tau));
  }

  /** Slope of the saturation line, Pa/K. */
  private static double pressureSlope(double kelvin) {
    double tau = 1 - kelvin / CRITICAL_KELVIN;
    double seriesSlope =
        -7.85951783
            + 1.5 * 1.84408259 * Math.pow(tau, 0.5)
            + 3 * -11.7866497 * Math.pow(tau, 2)
            + 3.5 * 22.6807411 * Math.pow(tau, 2.5)
            + 4 * -15.9618719 * Math.pow(tau, 3)
            + 7.5 * 1.80122502 * Math.pow(tau, 6.5);
    double pressure = saturationPressure(kelvin);
    return -pressure / kelvin * (seriesSlope + Math.log(pressure / CRITICAL_PASCALS));
  }

  private static double pressureSeries(double tau) {
    return -7.85951783 * tau
        + 1.84408259 * Math.pow(tau, 1.5)
        - 11.7866497 * Math.pow(tau, 3)
        + 22.6807411 * Math.pow(tau, 3.5)
        - 15.9618719 * Math.pow(tau, 4)
        + 1.80122502 * Math.pow(tau, 7.5);
  }

  private static double liquidDensity(double kelvin) {
    double cube = Math.cbrt(1 - kelvin / CRITICAL_KELVIN);
    return CRITICAL_DENSITY
        * (1
            + 1.99274064 * cube
            + 1.09965342 * Math.pow(cube, 2)
            - 0.510839303 * Math.pow(cube, 5)
            - 1.75493479 * Math.pow(cube, 16)
            - 45.5170352 * Math.pow(cube, 43)
            - 6.74694450e5 * Math.pow(cube, 110));
  }

  private static double vapourDensity(double kelvin) {
    double sixth = Math.pow(1 - kelvin / CRITICAL_KELVIN, 1.0 / 6);
    return CRITICAL_DENSITY
        * Math.exp(
            -2.03150240 * Math.pow(sixth, 2)
                - 2.68302940 * Math.pow(sixth, 4)
                - 5.38626492 * Math.pow(sixth, 8)
                - 17.2991605 * Math.pow(sixth, 18)
                - 44.7586581 * Math.pow(sixth, 37)
                - 63.9201063 * Math.pow(sixth, 71));
  }
}
