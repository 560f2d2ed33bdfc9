package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Sheet;
import java.awt.Graphics2D;

/** Paints a sheet, whatever onto: its panels, then title and key. */
final class SheetPainter {

  private final SheetHeader header;
  private final PanelPainter panels;

  SheetPainter(Lettering lettering, Ink ink) {
    this.header = new SheetHeader(lettering, ink);
    this.panels = new PanelPainter(lettering, ink);
  }

  /** Paints in CSS pixels from the upper left corner. */
  void paint(Graphics2D g, Sheet sheet) {
    for (Panel panel : sheet.panels()) {
      panels.paint(g, panel);
    }
    header.paint(g, sheet);
  }
}
