package fairboil.reports.chart.xchart;

import java.awt.geom.Rectangle2D;

/** Which parts of a panel something is drawn on, in cells of a few pixels. */
final class Occupancy {

  private static final double CELL = 3;

  private final int columns;
  private final int rows;
  private final boolean[] taken;

  Occupancy(double width, double height) {
    this.columns = (int) Math.ceil(width / CELL);
    this.rows = (int) Math.ceil(height / CELL);
    this.taken = new boolean[columns * rows];
  }

  void take(Rectangle2D area) {
    for (int row = row(area.getMinY()); row <= row(area.getMaxY()); row++) {
      for (int column = column(area.getMinX()); column <= column(area.getMaxX()); column++) {
        taken[row * columns + column] = true;
      }
    }
  }

  /** Takes the cells along a line. */
  void take(double x1, double y1, double x2, double y2) {
    int steps = Math.min(4096, 1 + (int) (Math.hypot(x2 - x1, y2 - y1) / CELL));
    for (int i = 0; i <= steps; i++) {
      double share = (double) i / steps;
      taken[row(y1 + share * (y2 - y1)) * columns + column(x1 + share * (x2 - x1))] = true;
    }
  }

  /** How many cells of the area are taken. */
  int taken(Rectangle2D area) {
    int count = 0;
    for (int row = row(area.getMinY()); row <= row(area.getMaxY()); row++) {
      for (int column = column(area.getMinX()); column <= column(area.getMaxX()); column++) {
        count += taken[row * columns + column] ? 1 : 0;
      }
    }
    return count;
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) (y / CELL)));
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) (x / CELL)));
  }
}
