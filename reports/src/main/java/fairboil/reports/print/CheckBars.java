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
    bar(page, left, top, METRIC, 10, "this bar must measure 100 mm");
    bar(page, left + METRIC + APART, top, INCHES, 4, "this bar must measure 4 in");
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

  /** Draws the metric bar upright: paper may be stretched in one direction only. */
  static void upright(Canvas page, double x, double top) {
    page.line(x, top, x, top + METRIC, Pen.BOLD);
    for (int i = 0; i <= 10; i++) {
      double y = top + METRIC * i / 10;
      double tick = i == 0 || i == 10 ? TICK : SUBTICK;
      page.line(x - tick, y, x, y, Pen.FINE);
    }
    page.textUp(
        "this bar must measure 100 mm",
        x - 2.9,
        top + METRIC / 2,
        Type.SMALL_STRONG,
        Canvas.Side.MIDDLE);
  }
}
