package fairboil.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A whole picture as it is to be drawn.
 *
 * @param title what it shows, in a few words
 * @param subtitle what to know of it, in one line; may be empty
 * @param key what its marks are; may be empty
 * @param keyRows in how many rows the key may stand
 * @param panels its panels
 * @param width width in CSS pixels
 * @param height height in CSS pixels
 * @param sharpness how many pixels a CSS pixel gets along each side, at least 1
 */
public record Sheet(
    String title,
    String subtitle,
    List<KeyEntry> key,
    int keyRows,
    List<Panel> panels,
    int width,
    int height,
    int sharpness) {

  /** Width of every picture on screens in CSS pixels. */
  public static final int WIDTH = 496;

  /** Height of a row of the key. */
  public static final int KEY_ROW = 20;

  /** Copies the lists. */
  public Sheet {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(subtitle, "subtitle");
    key = List.copyOf(key);
    panels = List.copyOf(panels);
    if (sharpness < 1) {
      throw new IllegalArgumentException("not a sharpness: " + sharpness);
    }
  }

  /** A sheet whose key stands in one row. */
  public Sheet(
      String title,
      String subtitle,
      List<KeyEntry> key,
      List<Panel> panels,
      int width,
      int height,
      int sharpness) {
    this(title, subtitle, key, 1, panels, width, height, sharpness);
  }

  /** Title and subtitle, in the lines that there is room for. */
  public Heading heading() {
    return Heading.of(title, subtitle, width);
  }

  /** The same sheet with another first panel. */
  Sheet withFirst(Panel panel) {
    List<Panel> others = new ArrayList<>(panels);
    others.set(0, panel);
    return new Sheet(title, subtitle, key, keyRows, others, width, height, sharpness);
  }
}
