package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartMark.Weight;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.util.regex.Pattern;

/** Measures and draws words in the bundled font. Sizes in CSS pixels. */
final class ChartLettering {

  private static final FontRenderContext FRACTIONAL = new FontRenderContext(null, true, true);
  private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cntrl}\\p{Cf}]+");
  private static final String ELLIPSIS = "…";
  private static final int LONGEST = 400;

  private final Typeface typeface;

  ChartLettering(Typeface typeface) {
    this.typeface = typeface;
  }

  Font font(Weight weight, float size) {
    return typeface.of(weight, size);
  }

  /** How wide the words are. */
  double width(String text, Font font) {
    return text.isEmpty() ? 0 : font.getStringBounds(text, FRACTIONAL).getWidth();
  }

  /** The words on one line, without marks that cannot be seen, cut with an ellipsis to fit. */
  String fitted(String text, Font font, double room) {
    String line = INVISIBLE.matcher(shortened(text)).replaceAll(" ").strip();
    if (width(line, font) <= room) {
      return line;
    }
    int low = 0;
    int high = line.length();
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (width(cut(line, middle), font) <= room) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return cut(line, low);
  }

  private static String shortened(String text) {
    return text.length() > LONGEST ? cut(text, LONGEST) : text;
  }

  private static String cut(String line, int length) {
    boolean splits =
        length > 0 && length < line.length() && Character.isHighSurrogate(line.charAt(length - 1));
    return line.substring(0, splits ? length - 1 : length).strip() + ELLIPSIS;
  }

  void draw(Graphics2D g, String text, double x, double baseline, Font font, Color color) {
    g.setFont(font);
    g.setColor(color);
    g.drawString(text, (float) x, (float) baseline);
  }

  void drawRight(Graphics2D g, String text, double right, double baseline, Font font, Color color) {
    draw(g, text, right - width(text, font), baseline, font, color);
  }
}
