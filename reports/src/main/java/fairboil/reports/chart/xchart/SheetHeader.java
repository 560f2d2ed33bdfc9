package fairboil.reports.chart.xchart;

import fairboil.reports.chart.KeyEntry;
import fairboil.reports.chart.Mark.Weight;
import fairboil.reports.chart.Sheet;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Title, subtitle and key of a sheet. */
final class SheetHeader {

  private static final double EDGE = 14;
  private static final double KEY_MIDDLE = 67;
  private static final double WIDEST_ENTRY = 190;
  private static final double AFTER_MARK = 6;
  private static final double BETWEEN = 22;

  private final Lettering lettering;
  private final Font titleFont;
  private final Font subtitleFont;
  private final Font keyFont;

  SheetHeader(Lettering lettering) {
    this.lettering = lettering;
    this.titleFont = lettering.font(Weight.BOLD, 17);
    this.subtitleFont = lettering.font(Weight.PLAIN, 13.5f);
    this.keyFont = lettering.font(Weight.PLAIN, 13);
  }

  void paint(Graphics2D g, Sheet sheet) {
    double room = sheet.width() - 2 * EDGE;
    lettering.draw(
        g, lettering.fitted(sheet.title(), titleFont, room), EDGE, 26, titleFont, Ink.TEXT);
    lettering.draw(
        g,
        lettering.fitted(sheet.subtitle(), subtitleFont, room),
        EDGE,
        47,
        subtitleFont,
        Ink.SECOND_TEXT);
    paintKey(g, sheet.key(), sheet.width() - EDGE);
  }

  private void paintKey(Graphics2D g, List<KeyEntry> key, double right) {
    double x = EDGE;
    for (int i = 0; i < key.size(); i++) {
      KeyEntry entry = key.get(i);
      String text = lettering.fitted(entry.text(), keyFont, WIDEST_ENTRY);
      double width = markWidth(entry) + AFTER_MARK + lettering.width(text, keyFont);
      if (x + width > right - (i < key.size() - 1 ? 80 : 0)) {
        draw(g, "and " + (key.size() - i) + " more", x);
        return;
      }
      paintMark(g, entry, x);
      draw(g, text, x + markWidth(entry) + AFTER_MARK);
      x += width + BETWEEN;
    }
  }

  private void draw(Graphics2D g, String text, double x) {
    lettering.draw(g, text, x, KEY_MIDDLE + 4.5, keyFont, Ink.TEXT);
  }

  private static double markWidth(KeyEntry entry) {
    if (entry instanceof KeyEntry.Measure measure) {
      return measure.length();
    }
    return entry instanceof KeyEntry.Symbol ? 12 : 22;
  }

  private static void paintMark(Graphics2D g, KeyEntry entry, double x) {
    if (entry instanceof KeyEntry.Symbol symbol) {
      Color color = Ink.color(symbol.hue());
      new GlyphMarker(symbol.glyph(), symbol.fill(), color, symbol.size())
          .paint(g, x + 6, KEY_MIDDLE, 0);
    } else if (entry instanceof KeyEntry.Stroke line) {
      g.setColor(Ink.color(line.hue()));
      g.setStroke(Ink.stroke(line.dash(), line.width()));
      g.draw(new Line2D.Double(x, KEY_MIDDLE, x + 22, KEY_MIDDLE));
    } else if (entry instanceof KeyEntry.Area area) {
      g.setColor(Ink.color(area.hue()));
      g.fill(new Rectangle2D.Double(x, KEY_MIDDLE - 7, 22, 14));
    } else if (entry instanceof KeyEntry.Measure measure) {
      paintMeasure(g, measure, x);
    }
  }

  private static void paintMeasure(Graphics2D g, KeyEntry.Measure measure, double x) {
    double end = x + measure.length();
    g.setColor(Ink.color(measure.hue()));
    g.setStroke(Ink.HAIR);
    g.draw(new Line2D.Double(x, KEY_MIDDLE, end, KEY_MIDDLE));
    g.draw(new Line2D.Double(x, KEY_MIDDLE - 4, x, KEY_MIDDLE + 4));
    g.draw(new Line2D.Double(end, KEY_MIDDLE - 4, end, KEY_MIDDLE + 4));
  }
}
