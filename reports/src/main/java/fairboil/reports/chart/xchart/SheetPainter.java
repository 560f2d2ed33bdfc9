package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Painted;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Sheet;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** Paints a sheet, whatever onto: its panels, then title and key. */
final class SheetPainter {

  private final SheetHeader header;
  private final PanelPainter panels;

  SheetPainter(ChartLettering lettering, ChartInk ink) {
    this.header = new SheetHeader(lettering, ink);
    this.panels = new PanelPainter(lettering, ink);
  }

  /** Paints in CSS pixels from the upper left corner, and gives the places of tips. */
  List<Painted.Tip> paint(Graphics2D g, Sheet sheet) {
    List<Painted.Tip> tips = new ArrayList<>();
    for (Panel panel : sheet.panels()) {
      tips.addAll(panels.paint(g, panel));
    }
    header.paint(g, sheet);
    return tips;
  }
}
