package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;

/**
 * An axis as XChart is told of it: counted in steps from one mark to the next. XChart marks an axis
 * at multiples of 1, 2 or 5 times a power of ten, and knows no quarters of an hour; counted so, our
 * marks are whole numbers, and it puts its own there and nowhere else.
 *
 * @param axis the axis
 * @param marks where it is marked
 * @param pixels how long it is drawn
 */
record Ruler(Axis axis, Graduation marks, int pixels) {

  // Figures are written by AxisWords.
  private static final String NO_FIGURE = "";
  // Where the last figure reads like the first, XChart leaves out all marks.
  private static final String LAST = " ";
  // XChart takes the next wider step where a figure has more than 20 letters.
  private static final String TOO_LONG = "no mark of ours is here";

  double from() {
    return counted(axis.from());
  }

  double to() {
    return counted(axis.to());
  }

  /** Whether a grid is drawn at its marks. */
  boolean isMarked() {
    return axis.ticks() != Ticks.NONE;
  }

  double counted(double value) {
    return value / marks.step();
  }

  double[] counted(double[] values) {
    double[] counted = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      counted[i] = counted(values[i]);
    }
    return counted;
  }

  /** How far apart marks are, in pixels, as a hint for XChart; no more than there is room for. */
  int spacing() {
    return (int) Math.max(1, Math.min(pixels, Math.rint(pixels / counted(axis.length()))));
  }

  /** What XChart is told to write at a count. */
  String figure(double count) {
    if (!isMarked()) {
      return NO_FIGURE;
    }
    if (count == to()) {
      return LAST;
    }
    return count == Math.rint(count) ? NO_FIGURE : TOO_LONG;
  }
}
