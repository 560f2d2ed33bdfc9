package fairboil.reports.words;

import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.figure.Interval;
import fairboil.ingest.dimension.Dimension;

/**
 * Slopes as people read them. They carry a digit more than other values: so much hangs on where
 * their interval ends that its ends must not be rounded to the next whole degree or second.
 */
public final class Slopes {

  /** Rounded as if the uncertainty were this part of the interval's width. */
  private static final double PART_OF_WIDTH = 1.0 / 12;

  private Slopes() {}

  /** The slope without its unit, such as {@code −9.6}. */
  public static String number(Display display, EffectRow row, Dimension dimension) {
    return display.number(row.estimate(), coarseness(display, row, dimension), dimension);
  }

  /** The ends of its interval without their unit, such as {@code −15.9 to −3.3}. */
  public static String range(Display display, EffectRow row, Dimension dimension) {
    return display.range(row.interval(), coarseness(display, row, dimension), dimension);
  }

  /** The same slope in the other direction: a fall told as a size. */
  static EffectRow turned(EffectRow row) {
    Interval interval = row.interval();
    return new EffectRow(
        row.model(),
        row.term(),
        -row.estimate(),
        row.standardError(),
        row.degreesOfFreedom(),
        new Interval(-interval.high(), -interval.low()),
        row.pValue(),
        row.runs(),
        row.builds());
  }

  private static double coarseness(Display display, EffectRow row, Dimension dimension) {
    double wished = row.interval().width() * PART_OF_WIDTH;
    return Coarseness.telling(display, dimension, wished, row.interval(), 0);
  }
}
