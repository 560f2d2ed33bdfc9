package fairboil.reports.words;

import fairboil.analysis.precision.Repeatability;
import fairboil.ingest.quantity.Dimension;

/** What is said of scatter. */
public final class ScatterWords {

  private ScatterWords() {}

  /** Where a scatter comes from, such as {@code run to run} or {@code build to build, two-wall}. */
  public static String level(Repeatability scatter) {
    return scatter.design().isEmpty()
        ? scatter.level().label()
        : scatter.level().label() + ", " + scatter.design();
  }

  /** A scatter between builds of 0 is none seen, which is not none. */
  public static String seen(Display display, Repeatability scatter) {
    Dimension dimension = scatter.measure().dimension().ofDifference();
    return scatter.sd() == 0
        ? "not seen; up to " + display.value(scatter.interval().high(), 0, dimension)
        : display.value(scatter.sd(), scatter.sd() / 5, dimension);
  }
}
