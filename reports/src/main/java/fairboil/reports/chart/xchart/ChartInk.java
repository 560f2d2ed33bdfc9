package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Dash;
import fairboil.reports.chart.Hue;
import fairboil.reports.chart.Tint;
import java.awt.BasicStroke;
import java.awt.Color;

/** Colours and strokes of the one style that all charts share, in colours or in greys. */
final class ChartInk {

  static final Color PAPER = Color.WHITE;
  static final BasicStroke HAIR = new BasicStroke(1f);

  private static final int FAINT_ALPHA = 110;
  private static final int FAINT_GREY_ALPHA = 170;

  private final Tint tint;

  private ChartInk(Tint tint) {
    this.tint = tint;
  }

  static ChartInk of(Tint tint) {
    return new ChartInk(tint);
  }

  Color color(Hue hue) {
    return tint == Tint.COLOUR ? new Color(hue.rgb()) : grey(hue.grey());
  }

  /** The colour of words that belong to something of that colour: among greys, always dark. */
  Color word(Hue hue) {
    return tint == Tint.COLOUR || hue == Hue.GREY ? color(hue) : text();
  }

  Color text() {
    return color(Hue.BLACK);
  }

  Color secondText() {
    return color(Hue.GREY);
  }

  Color grid() {
    return tinted(0xE6EAED);
  }

  Color axis() {
    return tinted(0x8A949C);
  }

  Color moment() {
    return tinted(0xB4BCC3);
  }

  /** A grey with a little blue in it, or without. */
  private Color tinted(int rgb) {
    return tint == Tint.COLOUR ? new Color(rgb) : grey(rgb >> 8 & 0xFF);
  }

  private static Color grey(int level) {
    return new Color(level, level, level);
  }

  /** So thin that others show through; greys, having less to be told by, less so. */
  Color faint(Hue hue) {
    Color color = color(hue);
    int alpha = tint == Tint.COLOUR ? FAINT_ALPHA : FAINT_GREY_ALPHA;
    return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
  }

  static BasicStroke stroke(Dash dash, double width) {
    float thick = (float) width;
    return switch (dash) {
      case SOLID -> new BasicStroke(thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
      case DASHED -> broken(thick, 7, 4);
      case DOTTED -> broken(thick, 2, 3);
    };
  }

  private static BasicStroke broken(float width, float on, float off) {
    return new BasicStroke(
        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {on, off}, 0);
  }
}
