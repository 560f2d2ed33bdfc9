package fairboil.reports.words;

import fairboil.analysis.figure.Interval;
import fairboil.ingest.dimension.Dimension;

/** How coarsely an interval may be told without hiding on which side of a bound its ends lie. */
final class Coarseness {

  private static final int MOST_STEPS = 4;

  private Coarseness() {}

  /**
   * The coarseness wished for, or as much finer as it takes for no end of the interval to read like
   * a bound that it is not.
   */
  static double telling(
      Display display, Dimension dimension, double wished, Interval interval, double... bounds) {
    double coarseness = wished;
    for (int i = 0; i < MOST_STEPS; i++) {
      if (!hides(display, dimension, coarseness, interval, bounds)) {
        return coarseness;
      }
      coarseness /= 10;
    }
    return wished;
  }

  private static boolean hides(
      Display display, Dimension dimension, double coarseness, Interval interval, double[] bounds) {
    for (double bound : bounds) {
      String text = display.number(bound, coarseness, dimension);
      if (Double.isFinite(bound)
          && (hides(display, dimension, coarseness, interval.low(), bound, text)
              || hides(display, dimension, coarseness, interval.high(), bound, text))) {
        return true;
      }
    }
    return false;
  }

  private static boolean hides(
      Display display,
      Dimension dimension,
      double coarseness,
      double end,
      double bound,
      String text) {
    return end != bound && display.number(end, coarseness, dimension).equals(text);
  }
}
