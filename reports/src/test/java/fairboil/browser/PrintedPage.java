package fairboil.browser;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;

/**
 * A page as printed: how large its paper is and where its pictures stand on it, in points from the
 * lower left corner.
 */
record PrintedPage(Rectangle2D paper, List<Rectangle2D> pictures) {

  static List<PrintedPage> of(byte[] pdf) throws IOException {
    List<PrintedPage> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        Finder finder = new Finder(page);
        finder.processPage(page);
        pages.add(
            new PrintedPage(
                new Rectangle2D.Double(
                    0, 0, page.getMediaBox().getWidth(), page.getMediaBox().getHeight()),
                List.copyOf(finder.found)));
      }
    }
    return List.copyOf(pages);
  }

  /** Whether all pictures stand on the paper as a whole. */
  boolean isWhole() {
    return pictures.stream().allMatch(paper::contains);
  }

  /** Looks for pictures and lets everything else pass. */
  private static final class Finder extends PDFGraphicsStreamEngine {

    private final List<Rectangle2D> found = new ArrayList<>();

    Finder(PDPage page) {
      super(page);
    }

    @Override
    public void drawImage(PDImage image) {
      Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
      found.add(
          matrix
              .createAffineTransform()
              .createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1))
              .getBounds2D());
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void moveTo(float x, float y) {}

    @Override
    public void lineTo(float x, float y) {}

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

    @Override
    public Point2D getCurrentPoint() {
      return new Point2D.Float();
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {}

    @Override
    public void strokePath() {}

    @Override
    public void fillPath(int windingRule) {}

    @Override
    public void fillAndStrokePath(int windingRule) {}

    @Override
    public void shadingFill(COSName shadingName) {}
  }
}
