package fairboil.reports.chart;

import java.util.Objects;

/**
 * An axis of a panel.
 *
 * @param title what it shows, with its unit; may be empty
 * @param from its lower end, finite
 * @param to its upper end, finite and above {@code from}
 * @param ticks how it is marked
 * @param isWritten whether figures stand at its marks
 */
public record Axis(String title, double from, double to, Ticks ticks, boolean isWritten) {

  /** Checks that there is a range. */
  public Axis {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(ticks, "ticks");
    if (!(from < to) || Double.isInfinite(from) || Double.isInfinite(to)) {
      throw new IllegalArgumentException("not a range: " + from + " to " + to);
    }
  }

  /** An axis with figures, if it is marked at all. */
  public Axis(String title, double from, double to, Ticks ticks) {
    this(title, from, to, ticks, ticks != Ticks.NONE);
  }

  /** How an axis is marked. */
  public enum Ticks {
    /** Plain numbers. */
    NUMBERS,
    /** Minutes, written as minutes and seconds. */
    CLOCK,
    /** Not at all. */
    NONE
  }

  /** To less from. */
  public double length() {
    return to - from;
  }

  /** The value, or the end of the axis that it lies beyond. */
  public double clamp(double value) {
    return Math.max(from, Math.min(to, value));
  }

  /** The same axis without figures and title. */
  public Axis bare() {
    return new Axis("", from, to, ticks, false);
  }
}
