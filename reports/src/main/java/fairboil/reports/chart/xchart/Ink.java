package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Dash;
import fairboil.reports.chart.Hue;
import java.awt.BasicStroke;
import java.awt.Color;

/** Colours and strokes of the one style that all charts share. */
final class Ink {

  static final Color PAPER = Color.WHITE;
  static final Color TEXT = color(Hue.BLACK);
  static final Color SECOND_TEXT = color(Hue.GREY);
  static final Color GRID = new Color(0xE6EAED);
  static final Color AXIS = new Color(0x8A949C);
  static final Color MOMENT = new Color(0xB4BCC3);
  static final BasicStroke HAIR = new BasicStroke(1f);

  private static final int FAINT_ALPHA = 110;

  private Ink() {}

  static Color color(Hue hue) {
    return new Color(hue.rgb());
  }

  static Color faint(Color color) {
    return new Color(color.getRed(), color.getGreen(), color.getBlue(), FAINT_ALPHA);
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
