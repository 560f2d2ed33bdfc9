package fairboil.analysis.sensor;

import java.util.OptionalDouble;

/**
 * Voltage of a thermocouple, and the temperature that goes with a voltage, on ITS-90.
 *
 * <p>The functions are those of NIST Monograph 175; the temperature is found by Newton's method on
 * the function itself, held within a bracket, rather than by the approximate inverse polynomials,
 * which are off by up to 0.05 K. A cold junction is allowed for as IEC 60584-1 has it: its voltage
 * is added, never its temperature.
 */
public final class Thermocouple {

  private static final double K_HUMP = 0.1185976;
  private static final double K_WIDTH = -1.183432e-4;
  private static final double K_MIDDLE = 126.9686;
  private static final int MOST_STEPS = 60;
  private static final double CLOSE_KELVINS = 1e-7;

  /** What turning volts into millivolts may lose, mV. */
  private static final double ROUNDING = 1e-9;

  /** Below this the voltage of type B falls with temperature: one voltage, two temperatures. */
  private static final double B_TURNS = 21.0203;

  private final SensorType type;
  private final ReferenceFunctions.Piece[] pieces;

  private Thermocouple(SensorType type) {
    this.type = type;
    this.pieces = ReferenceFunctions.of(type);
  }

  /**
   * A thermocouple of that type.
   *
   * @throws IllegalArgumentException if the type is no thermocouple
   */
  public static Thermocouple of(SensorType type) {
    if (!type.isThermocouple()) {
      throw new IllegalArgumentException(type + " is no thermocouple");
    }
    return new Thermocouple(type);
  }

  /** Lowest temperature of the reference function, °C. */
  public double lowest() {
    return pieces[0].from;
  }

  /** Highest temperature of the reference function, °C. */
  public double highest() {
    return pieces[pieces.length - 1].to;
  }

  /**
   * Voltage against a cold junction at 0 °C, in V.
   *
   * @param celsius from {@link #lowest()} to {@link #highest()}
   * @throws IllegalArgumentException outside that range
   */
  public double volts(double celsius) {
    if (!(celsius >= lowest() && celsius <= highest())) {
      throw new IllegalArgumentException("no voltage of type " + type + " at " + celsius + " °C");
    }
    return millivolts(celsius) * 1e-3;
  }

  /**
   * How fast the voltage rises with temperature (Seebeck coefficient), V/K; outside the range, at
   * its nearest end.
   */
  public double voltsPerKelvin(double celsius) {
    return slope(Math.max(lowest(), Math.min(highest(), celsius))) * 1e-3;
  }

  /**
   * The temperature of the hot junction, °C; empty where no temperature in range gives the voltage,
   * or the cold junction is out of range.
   *
   * @param volts the voltage measured
   * @param coldCelsius the temperature of the cold junction, °C
   */
  public OptionalDouble celsius(double volts, double coldCelsius) {
    if (!(coldCelsius >= lowest() && coldCelsius <= highest())) {
      return OptionalDouble.empty();
    }
    double wanted = volts * 1e3 + millivolts(coldCelsius);
    double low = type == SensorType.B ? B_TURNS : lowest();
    double high = highest();
    if (!(wanted >= millivolts(low) - ROUNDING && wanted <= millivolts(high) + ROUNDING)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(solve(wanted, low, high));
  }

  private double solve(double wanted, double from, double to) {
    double low = from;
    double high = to;
    double celsius = low + (high - low) / 2;
    for (int step = 0; step < MOST_STEPS; step++) {
      double over = millivolts(celsius) - wanted;
      if (over > 0) {
        high = celsius;
      } else {
        low = celsius;
      }
      double next = celsius - over / slope(celsius);
      next = next > low && next < high ? next : (low + high) / 2;
      if (Math.abs(next - celsius) < CLOSE_KELVINS) {
        return next;
      }
      celsius = next;
    }
    return celsius;
  }

  private double millivolts(double celsius) {
    double polynomial = piece(celsius).millivolts(celsius);
    return hasHump(celsius) ? polynomial + hump(celsius) : polynomial;
  }

  private double slope(double celsius) {
    double polynomial = piece(celsius).slope(celsius);
    return hasHump(celsius)
        ? polynomial + hump(celsius) * 2 * K_WIDTH * (celsius - K_MIDDLE)
        : polynomial;
  }

  private boolean hasHump(double celsius) {
    return type == SensorType.K && celsius > 0;
  }

  private static double hump(double celsius) {
    return K_HUMP * Math.exp(K_WIDTH * (celsius - K_MIDDLE) * (celsius - K_MIDDLE));
  }

  private ReferenceFunctions.Piece piece(double celsius) {
    for (ReferenceFunctions.Piece piece : pieces) {
      if (celsius <= piece.to) {
        return piece;
      }
    }
    return pieces[pieces.length - 1];
  }
}
