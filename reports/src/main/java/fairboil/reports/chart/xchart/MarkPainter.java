package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Mark;
import fairboil.reports.chart.Points;
import fairboil.reports.chart.Spot;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;

/** Paints marks without words between axes that are already known. */
final class MarkPainter {

  private final Graphics2D g;
  private final Frame frame;
  private final Ink ink;

  private MarkPainter(Graphics2D g, Frame frame, Ink ink) {
    this.g = g;
    this.frame = frame;
    this.ink = ink;
  }

  /** Paints the marks within the frame, the first at the bottom. */
  static void paint(Graphics2D panel, List<Mark> marks, Frame frame, Ink ink) {
    if (marks.isEmpty()) {
      return;
    }
    Graphics2D g = (Graphics2D) panel.create();
    g.clip(frame.plot());
    MarkPainter painter = new MarkPainter(g, frame, ink);
    marks.forEach(painter::paint);
    g.dispose();
  }

  private void paint(Mark mark) {
    if (mark instanceof Mark.Band band) {
      g.setColor(ink.color(band.hue()));
      g.fill(path(band.outline()));
    } else if (mark instanceof Mark.Line line) {
      g.setColor(ink.color(line.hue()));
      g.setStroke(Ink.stroke(line.dash(), line.width()));
      g.draw(path(line.points()));
    } else if (mark instanceof Mark.Dots dots) {
      paint(dots);
    } else if (mark instanceof Mark.Moment moment) {
      g.setColor(ink.moment());
      g.setStroke(Ink.HAIR);
      double x = frame.x(moment.x());
      g.draw(new Line2D.Double(x, frame.top(), x, frame.bottom()));
    }
  }

  private Path2D path(Points points) {
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

  private void paint(Mark.Dots dots) {
    GlyphMarker marker = GlyphMarker.of(dots, ink);
    for (int i = 0; i < dots.points().size(); i++) {
      Spot spot = dots.points().at(i);
      if (!Double.isNaN(spot.y())) {
        marker.paint(g, frame.x(spot.x()), frame.y(spot.y()), 0);
      }
    }
  }
}
