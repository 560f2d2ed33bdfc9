package fairboil.analysis.trace;

import fairboil.ingest.choice.Role;
import java.util.Objects;

/**
 * A channel thinned to what the eye sees on a chart: the lowest and highest reading of each stretch
 * are kept, so that no peak is lost. A gap is a NaN between two points. Immutable.
 */
public final class Curve {

  private final String name;
  private final Role role;
  private final double[] seconds;
  private final double[] celsius;

  /**
   * A curve through the given points.
   *
   * @param name the channel's name
   * @param role what the channel holds
   * @param seconds time of each point on the run's time line, in seconds; copied
   * @param celsius temperature of each point in °C, NaN for a gap; copied, as long as {@code
   *     seconds}
   */
  public Curve(String name, Role role, double[] seconds, double[] celsius) {
    this.name = Objects.requireNonNull(name, "name");
    this.role = Objects.requireNonNull(role, "role");
    if (seconds.length != celsius.length) {
      throw new IllegalArgumentException(
          seconds.length + " times and " + celsius.length + " temperatures");
    }
    this.seconds = seconds.clone();
    this.celsius = celsius.clone();
  }

  /** The channel's name. */
  public String name() {
    return name;
  }

  /** What the channel holds. */
  public Role role() {
    return role;
  }

  /** How many points there are. */
  public int size() {
    return seconds.length;
  }

  /** The times in seconds on the run's time line; a copy. */
  public double[] seconds() {
    return seconds.clone();
  }

  /** The temperatures in °C, NaN for gaps; a copy. */
  public double[] celsius() {
    return celsius.clone();
  }
}
