package fairboil.reports.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A printed page as a scanner of 600 dots per inch sees it. Millimetres. */
final class Page {

  private static final int DPI = 600;
  private static final double MM_PER_DOT = 25.4 / DPI;
  private static final double DARK = 0.35;

  private final BufferedImage image;

  private Page(BufferedImage image) {
    this.image = image;
  }

  static Page of(byte[] pdf, int index) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new Page(new PDFRenderer(document).renderImageWithDPI(index, DPI, ImageType.GRAY));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The middles of upright lines that cross a band from y to y + height, between two x. */
  List<Double> linesAcross(double y, double height, double fromX, double toX) {
    return middles(dots(fromX), dots(toX), dots(y), dots(y + height), false);
  }

  /** The middles of level lines that cross a band from x to x + width, between two y. */
  List<Double> linesDown(double x, double width, double fromY, double toY) {
    return middles(dots(fromY), dots(toY), dots(x), dots(x + width), true);
  }

  private List<Double> middles(int from, int to, int bandFrom, int bandTo, boolean down) {
    List<Double> middles = new ArrayList<>();
    double weight = 0;
    double moment = 0;
    for (int i = from; i <= to; i++) {
      double darkness = darkness(i, bandFrom, Math.max(bandTo, bandFrom + 1), down);
      if (darkness > DARK) {
        weight += darkness;
        moment += darkness * (i + 0.5);
      } else if (weight > 0) {
        middles.add(moment / weight * MM_PER_DOT);
        weight = 0;
        moment = 0;
      }
    }
    return middles;
  }

  private double darkness(int i, int bandFrom, int bandTo, boolean down) {
    double sum = 0;
    for (int j = bandFrom; j < bandTo; j++) {
      int grey = image.getRaster().getSample(down ? j : i, down ? i : j, 0);
      sum += 1 - grey / 255.0;
    }
    return sum / (bandTo - bandFrom);
  }

  private static int dots(double mm) {
    return (int) Math.round(mm / MM_PER_DOT);
  }
}
