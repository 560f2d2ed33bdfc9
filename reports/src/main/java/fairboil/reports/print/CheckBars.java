package fairboil.reports.print;

/** Bars of known length that show whether the printer kept the scale. */
final class CheckBars {

  /** Length of the metric bar, mm. */
  static final double METRIC = 100;

  /** Length of the inch bar, mm. */
  static final double INCHES = 4 * 25.4;

  /** Height that the bars that lie across take with their words, mm. */
  static final double HEIGHT = 19;

  private static final double TICK = 5;
  private static final double SUBTICK = 2;
  private static final double APART = 14;

  private CheckBars() {}

  /** Draws both bars across, and what to do if they are not right. */
  static void across(Canvas page, double left, double top) {
    metric(page, left, top);
    bar(page, left + METRIC + APART, top, INCHES, 4, "this bar must measure 4 in");
  }

  /** Draws the metric bar across, where there is no room for both. */
  static void metric(Canvas page, double left, double top) {
    bar(page, left, top, METRIC, 10, "this bar must measure 100 mm");
  }

  /** The words below the bars. */
  static void words(Canvas page, double left, double top, double width) {
    double y = top;
    for (String line : page.lettering().lines(PrintWords.BAR, width, Type.SMALL)) {
      page.text(line, left, y + Type.SMALL.capital(), Type.SMALL, Canvas.Side.LEFT);
      y += Type.SMALL.lineHeight();
    }
  }

  private static void bar(
      Canvas page, double left, double top, double length, int parts, String words) {
    double base = top + TICK;
    page.line(left, base, left + length, base, Pen.BOLD);
    for (int i = 0; i <= parts; i++) {
      double x = left + length * i / parts;
      double tick = i == 0 || i == parts ? TICK : SUBTICK;
      page.line(x, base - tick, x, base, Pen.FINE);
    }
    page.text(words, left + length / 2, base - 2.9, Type.SMALL_STRONG, Canvas.Side.MIDDLE);
  }

  /** Draws both bars upright: paper may be stretched in one direction only. */
  static void upright(Canvas page, double x, double top) {
    uprightBar(page, x, top, METRIC, 10, "this bar must measure 100 mm");
    uprightBar(page, x, top + METRIC + 3, INCHES, 4, "this bar must measure 4 in");
  }

  private static void uprightBar(
      Canvas page, double x, double top, double length, int parts, String words) {
    page.line(x, top, x, top + length, Pen.BOLD);
    for (int i = 0; i <= parts; i++) {
      double y = top + length * i / parts;
      double tick = i == 0 || i == parts ? TICK : SUBTICK;
      page.line(x - tick, y, x, y, Pen.FINE);
    }
    page.textUp(words, x - 2.9, top + length / 2, Type.SMALL_STRONG, Canvas.Side.MIDDLE);
  }
}
