package fairboil.reports.chart.xchart;

import com.pngencoder.PngEncoder;
import com.pngencoder.PngEncoderPhysicalPixelDimensions;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.Format;
import fairboil.reports.chart.Painted;
import fairboil.reports.chart.Painter;
import fairboil.reports.chart.Press;
import fairboil.reports.chart.Sheet;
import fairboil.reports.chart.Tint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Draws sheets with XChart. Safe for use by several threads: each drawing has its own charts. */
public final class XChartPainter implements Painter, Press {

  // Twice as fast as the usual level for a fifth more bytes.
  private static final int COMPRESSION = 3;
  // What is made to be passed on is worth the time.
  private static final int PRINT_COMPRESSION = 9;

  private final Map<Tint, SheetPainter> painters = new EnumMap<>(Tint.class);

  private XChartPainter(Typeface typeface) {
    ChartLettering lettering = new ChartLettering(typeface);
    for (Tint tint : Tint.values()) {
      painters.put(tint, new SheetPainter(lettering, ChartInk.of(tint)));
    }
  }

  /**
   * A painter that sets text in the bundled font.
   *
   * @throws ChartException if this Java cannot use fonts at all
   */
  public static XChartPainter withBundledFont() throws ChartException {
    return new XChartPainter(Typeface.load());
  }

  @Override
  public byte[] png(Sheet sheet) {
    return painted(sheet).png();
  }

  @Override
  public Painted painted(Sheet sheet) {
    List<Painted.Tip> tips = new ArrayList<>();
    return new Painted(png(image(sheet, tips)), tips);
  }

  private static byte[] png(BufferedImage image) {
    return new PngEncoder()
        .withBufferedImage(Palette.reduced(image))
        .withCompressionLevel(COMPRESSION)
        .withMultiThreadedCompressionEnabled(false)
        .toBytes();
  }

  @Override
  public byte[] png(Sheet sheet, Format format, Tint tint) {
    double scale = (double) format.pixels() / sheet.width();
    BufferedImage image =
        image(
            sheet,
            Objects.requireNonNull(painters.get(tint)),
            scale,
            (int) Math.round(sheet.height() * scale),
            new ArrayList<>());
    return new PngEncoder()
        .withBufferedImage(tint == Tint.GREY ? oneChannel(image) : image)
        .withCompressionLevel(PRINT_COMPRESSION)
        .withMultiThreadedCompressionEnabled(false)
        .withPhysicalPixelDimensions(
            PngEncoderPhysicalPixelDimensions.dotsPerInch(Format.DOTS_PER_INCH))
        .toBytes();
  }

  @Override
  public byte[] pdf(Sheet sheet, Format format, String title) {
    return ChartPdf.of(sheet, format, title, Objects.requireNonNull(painters.get(Tint.COLOUR)));
  }

  BufferedImage image(Sheet sheet) {
    return image(sheet, new ArrayList<>());
  }

  private BufferedImage image(Sheet sheet, List<Painted.Tip> tips) {
    int sharpness = sheet.sharpness();
    return image(
        sheet,
        Objects.requireNonNull(painters.get(Tint.COLOUR)),
        sharpness,
        sheet.height() * sharpness,
        tips);
  }

  private static BufferedImage image(
      Sheet sheet, SheetPainter painter, double scale, int heightInPixels, List<Painted.Tip> tips) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(sheet.width() * scale), heightInPixels, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.scale(scale, scale);
      g.setColor(ChartInk.PAPER);
      g.fillRect(0, 0, sheet.width(), sheet.height() + 1);
      tips.addAll(painter.paint(g, sheet));
    } finally {
      g.dispose();
    }
    return image;
  }

  /**
   * A picture of greys as one of one channel. Copied as it is: Java would change how light it is.
   */
  private static BufferedImage oneChannel(BufferedImage greys) {
    int width = greys.getWidth();
    int height = greys.getHeight();
    BufferedImage grey = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      greys.getRGB(0, y, width, 1, row, 0, width);
      for (int x = 0; x < width; x++) {
        row[x] &= 0xFF;
      }
      grey.getRaster().setSamples(0, y, width, 1, 0, row);
    }
    return grey;
  }
}
