package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.Glyph;
import fairboil.reports.chart.Hue;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.style.markers.Marker;

/** Our point markers; of equal size they look equally large. */
final class GlyphMarker extends Marker {

  private static final BasicStroke EDGE = new BasicStroke(1.2f);
  private static final BasicStroke OUTLINE = new BasicStroke(1.8f);

  private final Shape shape;
  private final Fill fill;
  private final Color color;

  GlyphMarker(Glyph glyph, Fill fill, Hue hue, double size, ChartInk ink) {
    this.shape = AffineTransform.getScaleInstance(size, size).createTransformedShape(unit(glyph));
    this.fill = fill;
    this.color = fill == Fill.FAINT ? ink.faint(hue) : ink.color(hue);
  }

  static GlyphMarker of(ChartMark.Dots dots, ChartInk ink) {
    return new GlyphMarker(dots.glyph(), dots.fill(), dots.hue(), dots.size(), ink);
  }

  /** The shape about the origin, about one wide. */
  private static Shape unit(Glyph glyph) {
    return switch (glyph) {
      case CIRCLE -> new Ellipse2D.Double(-0.5, -0.5, 1, 1);
      case SQUARE -> new Rectangle2D.Double(-0.45, -0.45, 0.9, 0.9);
      case TRIANGLE -> polygon(0, -0.6, 0.58, 0.44, -0.58, 0.44);
      case TRIANGLE_DOWN -> polygon(0, 0.6, 0.58, -0.44, -0.58, -0.44);
      case DIAMOND -> polygon(0, -0.62, 0.62, 0, 0, 0.62, -0.62, 0);
      case CROSS ->
          polygon(
              -0.17, -0.55, 0.17, -0.55, 0.17, -0.17, 0.55, -0.17, 0.55, 0.17, 0.17, 0.17, 0.17,
              0.55, -0.17, 0.55, -0.17, 0.17, -0.55, 0.17, -0.55, -0.17, -0.17, -0.17);
      case BAR -> new Rectangle2D.Double(-0.13, -0.75, 0.26, 1.5);
    };
  }

  private static Shape polygon(double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(corners[i], corners[i + 1]);
    }
    path.closePath();
    return path;
  }

  /** Paints the marker; its size is its own, not that which the chart has for all markers. */
  @Override
  public void paint(Graphics2D g, double x, double y, int chartMarkerSize) {
    Shape placed = AffineTransform.getTranslateInstance(x, y).createTransformedShape(shape);
    g.setColor(fill == Fill.HOLLOW ? ChartInk.PAPER : color);
    g.fill(placed);
    if (fill != Fill.FAINT) {
      g.setColor(fill == Fill.HOLLOW ? color : ChartInk.PAPER);
      g.setStroke(fill == Fill.HOLLOW ? OUTLINE : EDGE);
      g.draw(placed);
    }
  }
}
