package fairboil.analysis.clock;

import fairboil.analysis.trace.Sighting;
import java.util.Objects;

/**
 * An event that both log and stopwatch saw.
 *
 * @param name what people call it
 * @param log when the log shows it, s on the time line of the log
 * @param stopwatch when the stopwatch has it, s on the same line as far as the two are joined
 */
public record CommonEvent(String name, Sighting log, Sighting stopwatch) {

  /** Checks that all parts are there. */
  public CommonEvent {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(log, "log");
    Objects.requireNonNull(stopwatch, "stopwatch");
  }

  /** What has to be added to the time of the mark, s. */
  public double offset() {
    return log.seconds() - stopwatch.seconds();
  }

  /** Standard uncertainty of the offset, s. */
  public double uncertainty() {
    return Math.hypot(log.uncertainty(), stopwatch.uncertainty());
  }

  /** Whether two events tell the same offset, within twice the uncertainty of the difference. */
  boolean agreesWith(CommonEvent other) {
    double u = Math.hypot(uncertainty(), other.uncertainty());
    return Math.abs(offset() - other.offset()) <= 2 * u;
  }
}
