package fairboil.reports.chart.xchart;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import fairboil.reports.chart.Format;
import fairboil.reports.chart.Sheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** A sheet as a PDF of one page, just as large as the chart. Letters are outlines. */
final class ChartPdf {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private ChartPdf() {}

  static byte[] of(Sheet sheet, Format format, String title, SheetPainter painter) {
    double scale = format.millimetres() * POINTS_PER_MM / sheet.width();
    float width = (float) (sheet.width() * scale);
    float height = (float) (sheet.height() * scale);
    try (PDDocument document = new PDDocument()) {
      // A fixed number, or the identifier would hold the time of day.
      document.setDocumentId(1L);
      document.getDocumentInformation().setTitle(title);
      document.getDocumentCatalog().setLanguage("en");
      PDPage page = new PDPage(new PDRectangle(width, height));
      document.addPage(page);
      PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
      g.scale(scale, scale);
      painter.paint(g, sheet);
      g.dispose();
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.drawForm(g.getXFormObject());
      }
      ByteArrayOutputStream pdf = new ByteArrayOutputStream();
      document.save(pdf);
      return pdf.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
