package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Dash;
import fairboil.reports.chart.Mark;
import fairboil.reports.chart.Points;
import fairboil.reports.chart.Spot;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Paints long and broken lines, each as one path, and whatever lies on them.
 *
 * <p>XChart strokes every piece of a line by itself, which begins each dash anew, and looks at
 * every value several times to choose the figures of its axes: half the time of a trace.
 */
final class Traces {

  private static final int LONG = 100;

  private final List<Mark> under = new ArrayList<>();
  private final List<Mark> over = new ArrayList<>();

  Traces(List<Mark> marks) {
    for (Mark mark : marks) {
      boolean above = !over.isEmpty() && (mark instanceof Mark.Line || mark instanceof Mark.Dots);
      (above || isTrace(mark) ? over : under).add(mark);
    }
  }

  private static boolean isTrace(Mark mark) {
    return mark instanceof Mark.Line line
        && (line.dash() != Dash.SOLID || line.points().size() > LONG);
  }

  /** The marks that lie under all traces. */
  List<Mark> under() {
    return under;
  }

  /** Paints the traces and the lines and points that lie on them. */
  void paint(Graphics2D panel, Frame frame) {
    Graphics2D g = (Graphics2D) panel.create();
    g.clip(frame.plot());
    for (Mark mark : over) {
      if (mark instanceof Mark.Line line) {
        g.setColor(Ink.color(line.hue()));
        g.setStroke(Ink.stroke(line.dash(), line.width()));
        g.draw(path(line.points(), frame));
      } else if (mark instanceof Mark.Dots dots) {
        paint(g, dots, frame);
      }
    }
    g.dispose();
  }

  private static Path2D path(Points points, Frame frame) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, points.size());
    boolean broken = true;
    for (int i = 0; i < points.size(); i++) {
      Spot spot = points.at(i);
      if (Double.isNaN(spot.y())) {
        broken = true;
      } else if (broken) {
        path.moveTo(frame.x(spot.x()), frame.y(spot.y()));
        broken = false;
      } else {
        path.lineTo(frame.x(spot.x()), frame.y(spot.y()));
      }
    }
    return path;
  }

  private static void paint(Graphics2D g, Mark.Dots dots, Frame frame) {
    GlyphMarker marker = GlyphMarker.of(dots);
    for (int i = 0; i < dots.points().size(); i++) {
      Spot spot = dots.points().at(i);
      if (!Double.isNaN(spot.y())) {
        marker.paint(g, frame.x(spot.x()), frame.y(spot.y()), 0);
      }
    }
  }
}
