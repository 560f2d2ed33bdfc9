package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.ChartMark.Need;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.ChartPoint;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Points;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** Writes the labels of a panel where they hide nothing, the first come first served. */
final class DirectLabels {

  private static final double WIDEST = 170;
  private static final double HEIGHT = 15;
  private static final double ASCENT = 12;
  private static final double[] DISTANCES = {10.5, 17};
  // Right, left, above, below, then the corners: unit steps from the place to the label's centre.
  private static final int[][] SIDES = {
    {1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}
  };
  private static final Color VEIL = new Color(255, 255, 255, 190);

  private final ChartLettering lettering;
  private final ChartInk ink;
  private final Font plain;
  private final Font bold;

  DirectLabels(ChartLettering lettering, ChartInk ink) {
    this.lettering = lettering;
    this.ink = ink;
    this.plain = lettering.font(Weight.PLAIN, 12.5f);
    this.bold = lettering.font(Weight.BOLD, 12.5f);
  }

  void paint(Graphics2D g, Panel panel, Frame frame) {
    if (panel.marks().stream().noneMatch(ChartMark.Label.class::isInstance)) {
      return;
    }
    Occupancy occupancy = new Occupancy(panel.box().width(), panel.box().height());
    panel.marks().forEach(mark -> take(occupancy, mark, panel, frame));
    for (ChartMark mark : panel.marks()) {
      if (mark instanceof ChartMark.Label label) {
        paint(g, label, frame, occupancy);
      }
    }
  }

  private static void take(Occupancy occupancy, ChartMark mark, Panel panel, Frame frame) {
    if (mark instanceof ChartMark.Line line) {
      takeLine(occupancy, line.points(), frame);
    } else if (mark instanceof ChartMark.Dots dots) {
      for (int i = 0; i < dots.points().size(); i++) {
        takeDot(occupancy, dots.points().at(i), dots.size(), frame);
      }
    } else if (mark instanceof ChartMark.Moment moment) {
      double x = frame.x(moment.x());
      occupancy.take(x, frame.y(panel.y().from()), x, frame.y(panel.y().to()));
    }
  }

  private static void takeLine(Occupancy occupancy, Points points, Frame frame) {
    for (int i = 1; i < points.size(); i++) {
      ChartPoint from = points.at(i - 1);
      ChartPoint to = points.at(i);
      if (!Double.isNaN(from.y()) && !Double.isNaN(to.y())) {
        occupancy.take(frame.x(from.x()), frame.y(from.y()), frame.x(to.x()), frame.y(to.y()));
      }
    }
  }

  private static void takeDot(Occupancy occupancy, ChartPoint spot, double size, Frame frame) {
    if (!Double.isNaN(spot.y())) {
      double x = frame.x(spot.x()) - size / 2;
      occupancy.take(new Rectangle2D.Double(x, frame.y(spot.y()) - size / 2, size, size));
    }
  }

  private void paint(Graphics2D g, ChartMark.Label label, Frame frame, Occupancy occupancy) {
    Font font = label.weight() == Weight.BOLD ? bold : plain;
    String text = lettering.fitted(label.text(), font, WIDEST);
    double width = lettering.width(text, font);
    place(label, width, frame, occupancy)
        .ifPresent(
            area -> {
              if (occupancy.taken(area) > 0) {
                g.setColor(VEIL);
                g.fill(area);
              }
              occupancy.take(area);
              lettering.draw(
                  g, text, area.getX(), area.getY() + ASCENT, font, ink.word(label.hue()));
            });
  }

  /** The first free place, else the one that hides least if the label must stand. */
  private static Optional<Rectangle2D> place(
      ChartMark.Label label, double width, Frame frame, Occupancy occupancy) {
    Rectangle2D plot = frame.plot();
    Rectangle2D best = null;
    int least = Integer.MAX_VALUE;
    for (ChartPoint spot : label.spots()) {
      for (double distance : DISTANCES) {
        for (int[] side : SIDES) {
          Rectangle2D area = beside(spot, side, distance, width, frame);
          int hidden = plot.contains(area) ? occupancy.taken(area) : Integer.MAX_VALUE;
          if (hidden == 0) {
            return Optional.of(area);
          }
          if (hidden < least) {
            least = hidden;
            best = area;
          }
        }
      }
    }
    return label.need() == Need.ALWAYS ? Optional.ofNullable(best) : Optional.empty();
  }

  private static Rectangle2D beside(
      ChartPoint spot, int[] side, double distance, double width, Frame frame) {
    boolean corner = side[0] != 0 && side[1] != 0;
    double gap = corner ? distance * 0.5 : distance;
    double x = frame.x(spot.x()) + side[0] * (gap + width / 2) - width / 2;
    double y = frame.y(spot.y()) + side[1] * (gap + HEIGHT / 2) - HEIGHT / 2;
    return new Rectangle2D.Double(x, y, width, HEIGHT);
  }
}
