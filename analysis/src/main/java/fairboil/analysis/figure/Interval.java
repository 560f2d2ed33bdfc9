package fairboil.analysis.figure;

/**
 * A closed interval of values, in the unit in which the dimension at hand is held.
 *
 * @param low the lower end; may be −∞
 * @param high the upper end, not below {@code low}; may be +∞
 */
public record Interval(double low, double high) {

  /** Checks the order of the ends; neither may be NaN. */
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("not an interval: " + low + " to " + high);
    }
  }

  /** An interval of {@code halfWidth} to either side of {@code middle}. */
  public static Interval around(double middle, double halfWidth) {
    return new Interval(middle - halfWidth, middle + halfWidth);
  }

  /** Whether the value lies in the interval, ends included. */
  public boolean contains(double value) {
    return low <= value && value <= high;
  }

  /**
   * Whether the ends are the same but for rounding, as of values without any scatter: a nanosecond,
   * a nanokelvin or a microgram apart at most.
   */
  public boolean isPoint() {
    return width() < 1e-9;
  }

  /** High less low. */
  public double width() {
    return high - low;
  }
}
