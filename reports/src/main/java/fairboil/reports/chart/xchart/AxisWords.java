package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.Panel;
import java.awt.Font;
import java.awt.Graphics2D;

/**
 * The words along the axes of a panel, figures and titles, and which marks there is room for.
 *
 * <p>XChart draws the axes themselves. Its figures would be set as outlines, each several times
 * over; it leaves out those at the ends of an axis, and neither cuts nor moves a title that is
 * longer than its axis.
 */
final class AxisWords {

  private static final double GAP = 5;
  private static final double FIGURE_HEIGHT = 9;
  private static final double TITLE_DROP = 15;
  private static final double WORD_GAP = 9;
  // How far apart marks lie at least; the closer ones are taken where there would be few.
  private static final double ROOMY_ALONG = 60;
  private static final double CLOSE_ALONG = 34;
  private static final double ROOMY_UP = 34;
  private static final double CLOSE_UP = 17;
  private static final int FEW = 4;
  private static final double CLEAR_OF_HEADING = 2;
  // How far a figure at the end of an axis may reach beyond the panel's box.
  private static final double OVERHANG = 10;

  private final ChartLettering lettering;
  private final ChartInk ink;
  private final Font figureFont;
  private final Font titleFont;

  AxisWords(ChartLettering lettering, ChartInk ink) {
    this.lettering = lettering;
    this.ink = ink;
    this.figureFont = lettering.font(Weight.PLAIN, 12.5f);
    this.titleFont = lettering.font(Weight.PLAIN, 13);
  }

  /** The axis along a frame, with marks that leave room for the widest figure. */
  Ruler along(Frame frame) {
    Axis axis = frame.along();
    double pixel = axis.length() / frame.width();
    return new Ruler(
        axis, isMarked(axis) ? along(axis, pixel) : Graduation.none(axis), (int) frame.width());
  }

  /** The axis up a frame. */
  Ruler up(Frame frame) {
    Axis axis = frame.up();
    double pixel = axis.length() / frame.height();
    Graduation marks =
        isMarked(axis) ? marks(axis, ROOMY_UP * pixel, CLOSE_UP * pixel) : Graduation.none(axis);
    return new Ruler(axis, marks, (int) frame.height());
  }

  private static boolean isMarked(Axis axis) {
    return axis.ticks() != Ticks.NONE;
  }

  private Graduation along(Axis axis, double pixel) {
    Graduation marks = marks(axis, ROOMY_ALONG * pixel, CLOSE_ALONG * pixel);
    Figures figures = Figures.of(axis, marks.step());
    double widest =
        marks.values().stream()
            .mapToDouble(value -> lettering.width(figures.text(value), figureFont))
            .max()
            .orElse(0);
    double needed = (widest + WORD_GAP) * pixel;
    return needed > marks.step() ? Graduation.of(axis, needed) : marks;
  }

  private static Graduation marks(Axis axis, double roomy, double close) {
    Graduation marks = Graduation.of(axis, roomy);
    return marks.values().size() < FEW ? Graduation.of(axis, close) : marks;
  }

  /** Writes them beside the marks of those axes. */
  void paint(Graphics2D g, Panel panel, Frame frame, Ruler along, Ruler up) {
    if (along.axis().isWritten()) {
      paintAlong(g, panel, frame, along);
    }
    if (up.axis().isWritten()) {
      paintUp(g, frame, up);
    }
    paintTitle(g, panel, frame);
  }

  private void paintAlong(Graphics2D g, Panel panel, Frame frame, Ruler along) {
    double room = panel.box().width() + OVERHANG;
    Figures figures = Figures.of(along.axis(), along.marks().step());
    for (double value : along.marks().values()) {
      String figure = figures.text(value);
      double width = lettering.width(figure, figureFont);
      double left = within(Math.rint(frame.x(value)), width, -OVERHANG, room);
      write(g, figure, left, frame.bottom() + PanelChart.TICK + GAP + FIGURE_HEIGHT);
    }
  }

  private void paintUp(Graphics2D g, Frame frame, Ruler up) {
    Figures figures = Figures.of(up.axis(), up.marks().step());
    double right = frame.left() - PanelChart.TICK - GAP;
    for (double value : up.marks().values()) {
      double at = Math.rint(frame.y(value));
      if (at > frame.top() + CLEAR_OF_HEADING) {
        String figure = figures.text(value);
        write(g, figure, right - lettering.width(figure, figureFont), at + FIGURE_HEIGHT / 2);
      }
    }
  }

  private void write(Graphics2D g, String figure, double left, double baseline) {
    lettering.draw(g, figure, left, baseline, figureFont, ink.secondText());
  }

  private void paintTitle(Graphics2D g, Panel panel, Frame frame) {
    double room = panel.box().width();
    String title = lettering.fitted(panel.x().title(), titleFont, room);
    double drop = panel.x().isWritten() ? Frame.FIGURES_BELOW : 0;
    double middle = (frame.left() + frame.right()) / 2;
    double left = within(middle, lettering.width(title, titleFont), 0, room);
    lettering.draw(g, title, left, frame.bottom() + drop + TITLE_DROP, titleFont, ink.text());
  }

  /** Where words begin that stand about a middle, or as near to it as there is room. */
  private static double within(double middle, double width, double from, double to) {
    return Math.max(from, Math.min(to - width, middle - width / 2));
  }
}
