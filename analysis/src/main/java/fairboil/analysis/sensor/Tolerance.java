package fairboil.analysis.sensor;

import java.util.OptionalDouble;

/**
 * How far a new sensor of a class may be off: the half-width of its tolerance.
 *
 * <p>Sources: IEC 60584-1:2013 (thermocouples, classes 1 to 3), ASTM E230 (special and standard
 * limits, from 0 °C up), IEC 60751 (platinum thermometers). Wire that has been hot for long may be
 * off by more.
 */
public final class Tolerance {

  private Tolerance() {}

  /**
   * The half-width of the tolerance, in K; empty where the standards give none for the type and
   * class.
   *
   * @param celsius the temperature measured, °C
   */
  public static OptionalDouble halfWidth(SensorType type, ToleranceClass grade, double celsius) {
    double width = type == SensorType.PT100 ? platinum(grade, celsius) : pair(type, grade, celsius);
    return Double.isNaN(width) ? OptionalDouble.empty() : OptionalDouble.of(width);
  }

  private static double platinum(ToleranceClass grade, double celsius) {
    double size = Math.abs(celsius);
    return switch (grade) {
      case CLASS_AA -> 0.1 + 0.0017 * size;
      case CLASS_A -> 0.15 + 0.002 * size;
      case CLASS_B -> 0.3 + 0.005 * size;
      case CLASS_1, CLASS_2, CLASS_3, SPECIAL, STANDARD -> Double.NaN;
    };
  }

  private static double pair(SensorType type, ToleranceClass grade, double celsius) {
    return switch (grade) {
      case CLASS_1 -> classOne(type, celsius);
      case CLASS_2 -> classTwo(type, celsius);
      case CLASS_3 -> classThree(type, celsius);
      case SPECIAL -> special(type, celsius);
      case STANDARD -> standard(type, celsius);
      case CLASS_AA, CLASS_A, CLASS_B -> Double.NaN;
    };
  }

  private static double classOne(SensorType type, double celsius) {
    return switch (type) {
      case E, J, K, N -> larger(1.5, 0.004, celsius);
      case T -> larger(0.5, 0.004, celsius);
      case R, S -> celsius > 1100 ? 1 + 0.003 * (celsius - 1100) : 1;
      case B, PT100 -> Double.NaN;
    };
  }

  private static double classTwo(SensorType type, double celsius) {
    return switch (type) {
      case E, J, K, N -> larger(2.5, 0.0075, celsius);
      case T -> larger(1, 0.0075, celsius);
      case R, S -> larger(1.5, 0.0025, celsius);
      case B -> 0.0025 * Math.abs(celsius);
      case PT100 -> Double.NaN;
    };
  }

  private static double classThree(SensorType type, double celsius) {
    return switch (type) {
      case E, K, N -> larger(2.5, 0.015, celsius);
      case T -> larger(1, 0.015, celsius);
      case B -> larger(4, 0.005, celsius);
      case J, R, S, PT100 -> Double.NaN;
    };
  }

  private static double special(SensorType type, double celsius) {
    return switch (type) {
      case J, K, N -> larger(1.1, 0.004, celsius);
      case E -> larger(1, 0.004, celsius);
      case T -> larger(0.5, 0.004, celsius);
      case R, S -> larger(0.6, 0.001, celsius);
      case B, PT100 -> Double.NaN;
    };
  }

  private static double standard(SensorType type, double celsius) {
    return switch (type) {
      case J, K, N -> larger(2.2, 0.0075, celsius);
      case E -> larger(1.7, 0.005, celsius);
      case T -> larger(1, 0.0075, celsius);
      case R, S -> larger(1.5, 0.0025, celsius);
      case B -> 0.005 * Math.abs(celsius);
      case PT100 -> Double.NaN;
    };
  }

  private static double larger(double kelvins, double share, double celsius) {
    return Math.max(kelvins, share * Math.abs(celsius));
  }
}
