package fairboil.reports.chart;

/**
 * A part of a sheet, in CSS pixels from its upper left corner.
 *
 * @param x left edge
 * @param y upper edge
 * @param width above 0
 * @param height above 0
 */
public record Box(int x, int y, int width, int height) {

  /** Checks that it has a size. */
  public Box {
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("no size: " + width + " x " + height);
    }
  }
}
