package fairboil.reports.chart;

/** One entry of the line above a chart that tells what its marks are. */
public sealed interface KeyEntry {

  /** What the mark is. */
  String text();

  /** A point marker. */
  record Symbol(Glyph glyph, Hue hue, ChartMark.Fill fill, double size, String text)
      implements KeyEntry {}

  /** A line. */
  record Stroke(Hue hue, Dash dash, double width, String text) implements KeyEntry {}

  /** A filled area. */
  record Area(Hue hue, String text) implements KeyEntry {}

  /** A bar of a given length in CSS pixels, to measure by. */
  record Measure(double length, Hue hue, String text) implements KeyEntry {}
}
