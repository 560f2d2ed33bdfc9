package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.Painted;
import fairboil.reports.chart.Panel;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Paints a panel: what XChart draws of it, and the words about it. */
final class PanelPainter {

  private static final double HEADING_RISE = 7;
  private static final double ROW_GAP = 10;

  private final ChartLettering lettering;
  private final ChartInk ink;
  private final AxisWords axisWords;
  private final DirectLabels labels;
  private final MomentLanes lanes;
  private final Font headingFont;
  private final Font noteFont;
  private final Font plainRow;
  private final Font boldRow;

  PanelPainter(ChartLettering lettering, ChartInk ink) {
    this.lettering = lettering;
    this.ink = ink;
    this.axisWords = new AxisWords(lettering, ink);
    this.labels = new DirectLabels(lettering, ink);
    this.lanes = new MomentLanes(lettering, ink);
    this.headingFont = lettering.font(Weight.BOLD, 13);
    this.noteFont = lettering.font(Weight.PLAIN, 12.5f);
    this.plainRow = lettering.font(Weight.PLAIN, 13);
    this.boldRow = lettering.font(Weight.BOLD, 13);
  }

  /** Paints it, and gives the places of its tips on the sheet. */
  List<Painted.Tip> paint(Graphics2D sheet, Panel panel) {
    Graphics2D g = (Graphics2D) sheet.create();
    try {
      g.translate(panel.box().x(), panel.box().y());
      Frame frame = Frame.of(panel);
      Ruler along = axisWords.along(frame);
      Ruler up = axisWords.up(frame);
      new PanelChart(frame, along, up, panel.marks(), ink).paint(g);
      axisWords.paint(g, panel, frame, along, up);
      paintRows(g, panel, frame);
      labels.paint(g, panel, frame);
      lanes.paint(g, panel, frame);
      paintHeading(g, panel);
      return tips(panel, frame);
    } finally {
      g.dispose();
    }
  }

  private static List<Painted.Tip> tips(Panel panel, Frame frame) {
    List<Painted.Tip> tips = new ArrayList<>();
    for (ChartMark mark : panel.marks()) {
      if (mark instanceof ChartMark.Tip tip) {
        tips.add(
            new Painted.Tip(
                panel.box().x() + frame.x(tip.spot().x()),
                panel.box().y() + frame.y(tip.spot().y()),
                tip.size(),
                tip.text()));
      }
    }
    return tips;
  }

  private void paintHeading(Graphics2D g, Panel panel) {
    double room = panel.box().width() - 2 * panel.edge();
    double baseline = panel.edge() - HEADING_RISE;
    String note = lettering.fitted(panel.note(), noteFont, room * 0.75);
    double noteWidth = note.isEmpty() ? 0 : lettering.width(note, noteFont) + 8;
    String heading = lettering.fitted(panel.heading(), headingFont, room - noteWidth);
    double after = panel.edge() + lettering.width(heading, headingFont) + 8;
    if (panel.lanes() > 0) { // lines of moments must not run through the words
      g.setColor(ChartInk.PAPER);
      g.fill(new Rectangle2D.Double(panel.edge(), baseline - 12, after - panel.edge() - 4, 15));
    }
    lettering.draw(g, heading, panel.edge(), baseline, headingFont, ink.text());
    lettering.draw(g, note, after, baseline, noteFont, ink.secondText());
  }

  private void paintRows(Graphics2D g, Panel panel, Frame frame) {
    double room = panel.box().x() + frame.left() - ROW_GAP - 4;
    for (ChartMark mark : panel.marks()) {
      if (mark instanceof ChartMark.Row row) {
        Font font = row.weight() == Weight.BOLD ? boldRow : plainRow;
        double baseline = frame.y(row.y()) + 4.5;
        String left = lettering.fitted(row.left(), font, room);
        lettering.drawRight(g, left, frame.left() - ROW_GAP, baseline, font, ink.word(row.hue()));
        lettering.draw(
            g, row.right(), frame.right() + ROW_GAP, baseline, plainRow, ink.secondText());
      }
    }
  }
}
