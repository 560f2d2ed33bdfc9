package fairboil.analysis.trace;

import java.util.Optional;

/**
 * The median of a trace over a while: steadier than its peak.
 *
 * @param celsius the median, °C
 * @param noise its standard uncertainty from the scatter and slow wander of the readings, K
 */
public record Steady(double celsius, double noise) {

  private static final int FEWEST_READINGS = 10;

  /** Standard deviation of a median over that of a mean, for normal readings. */
  private static final double MEDIAN = Math.sqrt(Math.PI / 2);

  /** The median between two times, or empty for fewer than 10 readings. */
  public static Optional<Steady> of(Trace trace, double from, double to) {
    Trace part = trace.between(from, to).withoutMissing();
    if (part.size() < FEWEST_READINGS) {
      return Optional.empty();
    }
    double median = Robust.median(part.values());
    Line level = Line.through(part, 0, part.size());
    Line flat = new Line(part.size(), 0, 0, 0, 0, level.scatter(), level.memory());
    return Optional.of(new Steady(median, MEDIAN * flat.uncertaintyOfMean(0)));
  }
}
