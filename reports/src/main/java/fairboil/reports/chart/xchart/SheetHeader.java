package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.Heading;
import fairboil.reports.chart.KeyEntry;
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
  private static final double KEY_MIDDLE = 9;
  private static final double KEY_MIDDLE_UNTITLED = 14;
  private static final double UNDER_LINE = 5;
  private static final double WIDEST_ENTRY = 190;
  private static final double AFTER_MARK = 6;
  private static final double ROOM_FOR_MORE = 80;
  private static final double BETWEEN = 22;

  private final ChartLettering lettering;
  private final ChartInk ink;
  private final Font titleFont;
  private final Font subtitleFont;
  private final Font keyFont;

  SheetHeader(ChartLettering lettering, ChartInk ink) {
    this.lettering = lettering;
    this.ink = ink;
    this.titleFont = lettering.font(Weight.BOLD, 16);
    this.subtitleFont = lettering.font(Weight.PLAIN, 13.5f);
    this.keyFont = lettering.font(Weight.PLAIN, 13);
  }

  void paint(Graphics2D g, Sheet sheet) {
    double room = sheet.width() - 2 * EDGE;
    paintKey(g, sheet);
    Heading heading = sheet.heading();
    double baseline = UNDER_LINE;
    for (String line : heading.title()) {
      baseline += Heading.TITLE_LINE;
      draw(g, lettering.fitted(line, titleFont, room), baseline, titleFont, ink.text());
    }
    for (String line : heading.subtitle()) {
      baseline += Heading.SUBTITLE_LINE;
      draw(g, lettering.fitted(line, subtitleFont, room), baseline, subtitleFont, ink.secondText());
    }
  }

  private void draw(Graphics2D g, String line, double baseline, Font font, Color color) {
    lettering.draw(g, line, EDGE, baseline, font, color);
  }

  /** Entry after entry, in as many rows as there may be; the last tells how many had no room. */
  private void paintKey(Graphics2D g, Sheet sheet) {
    List<KeyEntry> key = sheet.key();
    double right = sheet.width() - EDGE;
    double middle =
        sheet.title().isEmpty() ? KEY_MIDDLE_UNTITLED : sheet.heading().below() + KEY_MIDDLE;
    double x = EDGE;
    int row = 1;
    for (int i = 0; i < key.size(); i++) {
      KeyEntry entry = key.get(i);
      String text = lettering.fitted(entry.text(), keyFont, WIDEST_ENTRY);
      double width = markWidth(entry) + AFTER_MARK + lettering.width(text, keyFont);
      if (row < sheet.keyRows() && x > EDGE && x + width > right) {
        row++;
        x = EDGE;
        middle += Sheet.KEY_ROW;
      }
      boolean mustLeaveRoom = row == sheet.keyRows() && i < key.size() - 1;
      if (x + width > right - (mustLeaveRoom ? ROOM_FOR_MORE : 0)
          && (!mustLeaveRoom || !restFits(key, i, x, right))) {
        draw(g, "and " + (key.size() - i) + " more", x, middle);
        return;
      }
      paintMark(g, entry, x, middle);
      draw(g, text, x + markWidth(entry) + AFTER_MARK, middle);
      x += width + BETWEEN;
    }
  }

  private boolean restFits(List<KeyEntry> key, int from, double x, double right) {
    double end = x - BETWEEN;
    for (KeyEntry entry : key.subList(from, key.size())) {
      String text = lettering.fitted(entry.text(), keyFont, WIDEST_ENTRY);
      end += BETWEEN + markWidth(entry) + AFTER_MARK + lettering.width(text, keyFont);
    }
    return end <= right;
  }

  private void draw(Graphics2D g, String text, double x, double middle) {
    lettering.draw(g, text, x, middle + 4.5, keyFont, ink.text());
  }

  private static double markWidth(KeyEntry entry) {
    if (entry instanceof KeyEntry.Measure measure) {
      return measure.length();
    }
    return entry instanceof KeyEntry.Symbol ? 12 : 22;
  }

  private void paintMark(Graphics2D g, KeyEntry entry, double x, double middle) {
    if (entry instanceof KeyEntry.Symbol symbol) {
      new GlyphMarker(symbol.glyph(), symbol.fill(), symbol.hue(), symbol.size(), ink)
          .paint(g, x + 6, middle, 0);
    } else if (entry instanceof KeyEntry.Stroke line) {
      g.setColor(ink.color(line.hue()));
      g.setStroke(ChartInk.stroke(line.dash(), line.width()));
      g.draw(new Line2D.Double(x, middle, x + 22, middle));
    } else if (entry instanceof KeyEntry.Area area) {
      g.setColor(ink.color(area.hue()));
      g.fill(new Rectangle2D.Double(x, middle - 7, 22, 14));
    } else if (entry instanceof KeyEntry.Measure measure) {
      paintMeasure(g, measure, x, middle);
    }
  }

  private void paintMeasure(Graphics2D g, KeyEntry.Measure measure, double x, double middle) {
    double end = x + measure.length();
    g.setColor(ink.color(measure.hue()));
    g.setStroke(ChartInk.HAIR);
    g.draw(new Line2D.Double(x, middle, end, middle));
    g.draw(new Line2D.Double(x, middle - 4, x, middle + 4));
    g.draw(new Line2D.Double(end, middle - 4, end, middle + 4));
  }
}
