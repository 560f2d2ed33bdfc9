package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.Mark.Weight;
import fairboil.reports.chart.Panel;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/**
 * Paints the axes of a panel: grid, lines, marks, figures and the title along.
 *
 * <p>XChart's own axes set each figure as an outline many times over, a tenth of the time of a
 * report; know no minutes; and fold up where a panel is low.
 */
final class AxesPainter {

  private static final double MARK = 4;
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

  private final Lettering lettering;
  private final Ink ink;
  private final Font figureFont;
  private final Font titleFont;

  AxesPainter(Lettering lettering, Ink ink) {
    this.lettering = lettering;
    this.ink = ink;
    this.figureFont = lettering.font(Weight.PLAIN, 12.5f);
    this.titleFont = lettering.font(Weight.PLAIN, 13);
  }

  /** Paints them; what the panel shows is painted over the grid afterwards. */
  void paint(Graphics2D g, Panel panel, Frame frame) {
    if (panel.x().ticks() != Ticks.NONE) {
      paintAlong(g, panel, frame);
    }
    if (panel.y().ticks() != Ticks.NONE) {
      paintUp(g, panel, frame);
    }
    paintTitle(g, panel, frame);
  }

  private void paintAlong(Graphics2D g, Panel panel, Frame frame) {
    Axis axis = panel.x();
    Graduation marks = along(axis, axis.length() / frame.width());
    for (double value : marks.values()) {
      line(g, ink.grid(), Math.rint(frame.x(value)), frame.top(), 0, frame.height());
    }
    if (axis.isWritten()) {
      line(g, ink.axis(), frame.left(), frame.bottom(), frame.width(), 0);
      double room = panel.box().width() + OVERHANG;
      Figures figures = Figures.of(axis, marks.step());
      for (double value : marks.values()) {
        double at = Math.rint(frame.x(value));
        line(g, ink.axis(), at, frame.bottom(), 0, MARK);
        String figure = figures.text(value);
        double left = within(at, lettering.width(figure, figureFont), -OVERHANG, room);
        write(g, figure, left, frame.bottom() + MARK + GAP + FIGURE_HEIGHT);
      }
    }
  }

  /**
   * Marks that leave room for the widest figure.
   *
   * @param pixel how much of the axis's unit a pixel is
   */
  Graduation along(Axis axis, double pixel) {
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

  private void paintUp(Graphics2D g, Panel panel, Frame frame) {
    Axis axis = panel.y();
    double pixel = axis.length() / frame.height();
    Graduation marks = marks(axis, ROOMY_UP * pixel, CLOSE_UP * pixel);
    for (double value : marks.values()) {
      line(g, ink.grid(), frame.left(), Math.rint(frame.y(value)), frame.width(), 0);
    }
    if (axis.isWritten()) {
      line(g, ink.axis(), frame.left(), frame.top(), 0, frame.height());
      Figures figures = Figures.of(axis, marks.step());
      for (double value : marks.values()) {
        double at = Math.rint(frame.y(value));
        line(g, ink.axis(), frame.left() - MARK, at, MARK, 0);
        if (at > frame.top() + CLEAR_OF_HEADING) {
          String figure = figures.text(value);
          double right = frame.left() - MARK - GAP;
          write(g, figure, right - lettering.width(figure, figureFont), at + FIGURE_HEIGHT / 2);
        }
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

  /** A line a pixel wide. */
  private static void line(
      Graphics2D g, Color color, double x, double y, double along, double down) {
    g.setColor(color);
    g.fill(
        along > 0
            ? new Rectangle2D.Double(x, y - 0.5, along, 1)
            : new Rectangle2D.Double(x - 0.5, y, 1, down));
  }
}
