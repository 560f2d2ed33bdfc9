package fairboil.reports.words;

import fairboil.analysis.precision.Repeatability;
import fairboil.ingest.dimension.Dimension;
import java.util.Optional;

/** What is said of scatter. */
public final class ScatterWords {

  private ScatterWords() {}

  /** Where a scatter comes from, such as {@code run to run} or {@code build to build, two-wall}. */
  public static String level(Repeatability scatter) {
    return scatter.design().isEmpty()
        ? scatter.level().label()
        : scatter.level().label() + ", " + scatter.design();
  }

  /** To what it is rounded: its own size, or the most that it may be where none was seen. */
  public static double coarseness(Repeatability scatter) {
    return (scatter.sd() == 0 ? scatter.interval().high() : scatter.sd()) / 5;
  }

  /** A scatter between builds of 0 is none seen, which is not none. */
  public static String seen(Display display, Repeatability scatter) {
    Dimension dimension = scatter.measure().dimension().ofDifference();
    return scatter.sd() == 0
        ? "not seen; up to "
            + display.value(scatter.interval().high(), coarseness(scatter), dimension)
        : display.value(scatter.sd(), coarseness(scatter), dimension);
  }

  /**
   * The coefficient of variation with its interval, such as {@code 5.2 % (3.9 to 7.8 %)}; none of
   * temperatures.
   */
  public static Optional<String> variation(Repeatability scatter) {
    return scatter
        .relativeInterval()
        .map(
            interval ->
                scatter.sd() == 0
                    ? "not seen; up to " + Display.percent(interval.high())
                    : Display.percent(scatter.relative().orElseThrow())
                        + " ("
                        + Display.percent(interval.low()).replace("\u00a0%", "")
                        + " to "
                        + Display.percent(interval.high())
                        + ")");
  }

  /** What two runs differ by at most, 19 times in 20, with its interval. */
  public static Optional<String> limit(Display display, Repeatability scatter) {
    Dimension dimension = scatter.measure().dimension().ofDifference();
    double coarseness = coarseness(scatter);
    return scatter
        .limitInterval()
        .map(
            interval ->
                display.value(scatter.limit().orElseThrow(), coarseness, dimension)
                    + " ("
                    + display.range(interval, coarseness, dimension)
                    + ")");
  }
}
