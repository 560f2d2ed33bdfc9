package fairboil.reports.chart.xchart;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/**
 * Lays the lines of a grid on whole pixels, where they are sharp, and keeps them off the axes,
 * which XChart paints first.
 */
final class GridStroke extends BasicStroke {

  private static final double HALF = 0.5;

  private final double axisUp;
  private final double axisAlong;

  /**
   * A stroke for a grid between axes.
   *
   * @param axisUp where the upright axis is
   * @param axisAlong where the level axis is
   */
  GridStroke(double axisUp, double axisAlong) {
    super(1f);
    this.axisUp = axisUp;
    this.axisAlong = axisAlong;
  }

  @Override
  public Shape createStrokedShape(Shape line) {
    Rectangle2D along = line.getBounds2D();
    return along.getWidth() > 0
        ? level(along, Math.rint(along.getY()))
        : upright(along, Math.rint(along.getX()));
  }

  private Shape level(Rectangle2D along, double y) {
    return y == axisAlong
        ? new Rectangle2D.Double()
        : new Rectangle2D.Double(along.getX() + HALF, y - HALF, along.getWidth() - 1, 1);
  }

  private Shape upright(Rectangle2D along, double x) {
    return x == axisUp
        ? new Rectangle2D.Double()
        : new Rectangle2D.Double(x - HALF, along.getY() + HALF, 1, along.getHeight() - 1);
  }
}
