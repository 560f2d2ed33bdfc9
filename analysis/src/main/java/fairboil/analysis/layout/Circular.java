package fairboil.analysis.layout;

/** Arithmetic round a circle of a given period. */
final class Circular {

  private Circular() {}

  /** The value, moved by whole periods into [−period/2, period/2). */
  static double wrapped(double value, double period) {
    return value - period * Math.floor(value / period + 0.5);
  }

  /**
   * The circular mean: the direction of the sum of the unit vectors (Fisher, Statistical Analysis
   * of Circular Data, 1993, section 2.3), in [−period/2, period/2]; 0 if the values cancel.
   */
  static double mean(double[] values, double period) {
    double sin = 0;
    double cos = 0;
    for (double value : values) {
      double angle = 2 * Math.PI * value / period;
      sin += Math.sin(angle);
      cos += Math.cos(angle);
    }
    boolean cancel = Math.hypot(sin, cos) < 1e-9 * values.length;
    return cancel ? 0 : Math.atan2(sin, cos) * period / (2 * Math.PI);
  }
}
