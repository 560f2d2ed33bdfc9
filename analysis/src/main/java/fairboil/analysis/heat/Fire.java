package fairboil.analysis.heat;

/**
 * A fire whose power into the pot grows evenly.
 *
 * @param power P0, when the pot goes on, W, above 0
 * @param growth g, growth a second as a share of {@code power}, 1/s; below 0 for a fire that dies
 *     down
 */
public record Fire(double power, double growth) {

  /** Checks the ranges. */
  public Fire {
    if (!(power > 0) || !Double.isFinite(power) || !Double.isFinite(growth)) {
      throw new IllegalArgumentException("not a fire: " + power + " W, " + growth + " 1/s");
    }
  }

  /** The power at a time since the pot went on, W; never below 0. */
  public double at(double seconds) {
    return Math.max(0, power * (1 + growth * seconds));
  }
}
