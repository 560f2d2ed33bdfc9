package fairboil.reports.chart;

import fairboil.reports.words.Caption;
import java.util.List;

/**
 * What a chart is laid out for. For print its title is left to the caption, and letters come out
 * equally large at either width: about 7 points.
 */
public enum Format {
  /**
   * The page and folder of charts: with its title. No wider than what is still read with ease on a
   * phone, where it is shown at three quarters of its size.
   */
  SCREEN("", Sheet.WIDTH, 0),
  /** A page of print: 175 mm wide. */
  PAGE("175mm", 900, 175),
  /** A column of print: 85 mm wide. */
  COLUMN("85mm", 437, 85);

  /** Pixels an inch of printed pictures. */
  public static final int DOTS_PER_INCH = 300;

  private static final double MILLIMETRES_PER_INCH = 25.4;
  private static final int SHARPNESS = 2;
  private static final int KEY_TOP = 6;
  private static final double LETTER = 7.2;
  private static final double FULL_WIDTH = 900;
  private static final int USUAL_TOP = 84;

  private final String label;
  private final int width;
  private final int millimetres;

  Format(String label, int width, int millimetres) {
    this.label = label;
    this.width = width;
    this.millimetres = millimetres;
  }

  /** The width in print, as names of files have it; empty for screens. */
  public String label() {
    return label;
  }

  /** Width in CSS pixels. */
  public int width() {
    return width;
  }

  /** Width in print in millimetres; 0 for screens. */
  public int millimetres() {
    return millimetres;
  }

  /** Width in print in pixels; 0 for screens. */
  public int pixels() {
    return (int) Math.round(millimetres / MILLIMETRES_PER_INCH * DOTS_PER_INCH);
  }

  /** A height for this width that looks about like {@code height} at full width. */
  int height(int height) {
    return (int) Math.round(height * (0.35 + 0.65 * width / FULL_WIDTH));
  }

  /** The same of a sheet whose panels start at {@code top}: what stands above adds to it. */
  int height(int height, int top) {
    return height(height) + (this == SCREEN ? Math.max(0, top - USUAL_TOP) : 0);
  }

  /** As much of a length as there is width, but not less than that. */
  int share(int length, int least) {
    return Math.max(least, (int) (length * width / FULL_WIDTH));
  }

  /** Whether there is room for two columns of what needs half of a page of print. */
  boolean isWide() {
    return this == PAGE;
  }

  /** Where the panels of a sheet with that caption and key may start. */
  int top(Caption caption, List<KeyEntry> key) {
    int rows = rows(key);
    if (this == SCREEN) {
      return Heading.of(caption.title(), caption.subtitle(), width).below()
          + (rows > 0 ? rows * Sheet.KEY_ROW + 6 : 0);
    }
    return KEY_TOP + rows * Sheet.KEY_ROW + (rows > 0 ? 8 : 0);
  }

  /** How many rows the key takes: by the number of its letters, rather too many than too few. */
  private int rows(List<KeyEntry> key) {
    int rows = key.isEmpty() ? 0 : 1;
    double x = 0;
    for (KeyEntry entry : key) {
      double mark = entry instanceof KeyEntry.Measure measure ? measure.length() : 22;
      double length = mark + 6 + LETTER * Math.min(24, entry.text().length());
      if (x > 0 && x + length > width - 28) {
        rows++;
        x = 0;
      }
      x += length + 22;
    }
    return rows;
  }

  /** A sheet of this format. */
  Sheet sheet(Caption caption, List<KeyEntry> key, List<Panel> panels, int height) {
    boolean titled = this == SCREEN;
    return new Sheet(
        titled ? caption.title() : "",
        titled ? caption.subtitle() : "",
        key,
        rows(key),
        panels,
        width,
        height,
        SHARPNESS);
  }
}
