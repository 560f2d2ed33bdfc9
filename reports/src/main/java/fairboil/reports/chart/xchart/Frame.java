package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import java.awt.geom.Rectangle2D;

/** Where the places of a panel are on the picture, in CSS pixels from the panel's corner. */
record Frame(Axis along, Axis up, double left, double right, double top, double bottom) {

  double x(double value) {
    return left + (value - along.from()) / along.length() * (right - left);
  }

  double y(double value) {
    return bottom - (value - up.from()) / up.length() * (bottom - top);
  }

  Rectangle2D plot() {
    return new Rectangle2D.Double(left, top, right - left, bottom - top);
  }
}
