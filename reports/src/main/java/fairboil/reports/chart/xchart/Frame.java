package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Panel;
import java.awt.geom.Rectangle2D;

/** Where the places of a panel are on the picture, in CSS pixels from the panel's corner. */
record Frame(Axis along, Axis up, double left, double right, double top, double bottom) {

  /** The room for the figures under an axis. */
  static final int FIGURES_BELOW = 20;

  private static final int FIGURES_LEFT = 50;
  private static final int TITLE_BELOW = 18;

  /** What a panel's box leaves once its edge, figures and title have their room. */
  static Frame of(Panel panel) {
    Axis x = panel.x();
    int below = (x.isWritten() ? FIGURES_BELOW : 0) + (x.title().isEmpty() ? 0 : TITLE_BELOW);
    return new Frame(
        x,
        panel.y(),
        panel.y().isWritten() ? FIGURES_LEFT : panel.edge(),
        panel.box().width() - panel.edge(),
        panel.edge(),
        panel.box().height() - panel.edge() - below);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  double x(double value) {
    return left + (value - along.from()) / along.length() * width();
  }

  double y(double value) {
    return bottom - (value - up.from()) / up.length() * height();
  }

  Rectangle2D plot() {
    return new Rectangle2D.Double(left, top, width(), height());
  }
}
