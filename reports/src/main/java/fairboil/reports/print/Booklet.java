package fairboil.reports.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;

/** A file of pages being drawn. The same drawing gives the same bytes. */
final class Booklet {

  /** Blank edge that every printer can do without, mm. */
  static final double MARGIN = 12;

  /** Height that the foot of a page takes above the margin, mm. */
  static final double FOOT = 7;

  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Which way a page lies. */
  enum Lie {
    UPRIGHT,
    ACROSS
  }

  private final PDDocument document;
  private final Lettering lettering;
  private final Paper paper;
  private final List<Canvas> pages = new ArrayList<>();

  private Booklet(PDDocument document, Lettering lettering, Paper paper) {
    this.document = document;
    this.lettering = lettering;
    this.paper = paper;
  }

  /**
   * Draws a file.
   *
   * @param head what the pages have in common
   * @param content draws the pages
   * @return the PDF
   */
  static byte[] of(FormHead head, Typefaces typefaces, Consumer<Booklet> content) {
    try (PDDocument document = new PDDocument()) {
      Booklet booklet = new Booklet(document, new Lettering(document, typefaces), head.paper());
      booklet.describe(head);
      content.accept(booklet);
      booklet.finish(head);
      ByteArrayOutputStream pdf = new ByteArrayOutputStream();
      document.save(pdf);
      return pdf.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void describe(FormHead head) {
    // A fixed number, or the identifier would hold the time of day.
    document.setDocumentId(1L);
    document.getDocumentInformation().setTitle(head.title());
    document.getDocumentCatalog().setLanguage("en");
    PDViewerPreferences preferences =
        new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
    preferences.setPrintScaling(PRINT_SCALING.None);
    preferences.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(preferences);
  }

  Lettering lettering() {
    return lettering;
  }

  /** A new page. */
  Canvas page(Lie lie) {
    double width = lie == Lie.UPRIGHT ? paper.shortSide() : paper.longSide();
    double height = lie == Lie.UPRIGHT ? paper.longSide() : paper.shortSide();
    PDPage page =
        new PDPage(
            new PDRectangle((float) (width * POINTS_PER_MM), (float) (height * POINTS_PER_MM)));
    document.addPage(page);
    try {
      Canvas canvas = new Canvas(new PDPageContentStream(document, page), lettering, width, height);
      pages.add(canvas);
      return canvas;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void finish(FormHead head) {
    for (int i = 0; i < pages.size(); i++) {
      Canvas page = pages.get(i);
      head.foot(page, i + 1, pages.size());
      page.close();
    }
  }
}
