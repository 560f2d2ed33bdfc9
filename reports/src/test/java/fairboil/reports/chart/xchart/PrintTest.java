package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.SampleResults;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.Format;
import fairboil.reports.chart.Hue;
import fairboil.reports.chart.Picture;
import fairboil.reports.chart.Print;
import fairboil.reports.words.Display;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Charts for print: size, resolution, and whether greys can be told apart. */
class PrintTest {

  /** Of a PNG at 300 dots an inch of 25.4 mm: PNG specification, 11.3.4.3. */
  private static final int PIXELS_PER_METRE = 11_811;

  private static final List<Hue> OF_DESIGNS =
      List.of(Hue.BLUE, Hue.VERMILION, Hue.GREEN, Hue.PURPLE, Hue.ORANGE, Hue.SKY, Hue.BLACK);

  private static XChartPainter painter;
  private static List<Print> prints;

  @BeforeAll
  static void draw() throws ChartException, IOException {
    painter = XChartPainter.withBundledFont();
    prints = prints(SampleResults.typical(DisplayUnits.METRIC), 2);
  }

  private static List<Print> prints(Results results, int threads) throws IOException {
    List<Print> prints = new ArrayList<>();
    ChartBook.of(results, Display.in(DisplayUnits.METRIC), new Faults())
        .print(painter, threads, prints::add);
    return prints;
  }

  private static BufferedImage image(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  @Test
  void everyChartOfTheStudyIsThereAtBothWidths() {
    assertThat(prints).noneMatch(print -> print.kind() == Picture.Kind.RUN);
    for (Picture.Kind kind :
        List.of(
            Picture.Kind.HOLE_EFFECT,
            Picture.Kind.BUILDS,
            Picture.Kind.RING_MAPS,
            Picture.Kind.BUDGET)) {
      assertThat(prints)
          .filteredOn(print -> print.kind() == kind)
          .extracting(Print::format)
          .contains(Format.PAGE, Format.COLUMN);
    }
  }

  /** 85 mm and 175 mm at 300 dots an inch are 1003.9 and 2066.9 dots. */
  @Test
  void picturesAreAsWideAsPrintNeedsAndTellTheirResolution() throws IOException {
    for (Print print : prints) {
      int width = print.format() == Format.COLUMN ? 1004 : 2067;
      for (byte[] png : List.of(print.png(), print.grey())) {
        assertThat(image(png).getWidth()).as(print.name()).isEqualTo(width);
        ByteBuffer physical = chunk(png, "pHYs");
        assertThat(physical.getInt()).isEqualTo(PIXELS_PER_METRE);
        assertThat(physical.getInt()).isEqualTo(PIXELS_PER_METRE);
        assertThat(physical.get()).as("the metre").isEqualTo((byte) 1);
      }
    }
  }

  private static ByteBuffer chunk(byte[] png, String name) {
    ByteBuffer all = ByteBuffer.wrap(png).position(8);
    while (all.remaining() > 12) {
      int length = all.getInt();
      byte[] type = new byte[4];
      all.get(type);
      if (new String(type, StandardCharsets.US_ASCII).equals(name)) {
        return all.slice(all.position(), length);
      }
      all.position(all.position() + length + 4);
    }
    throw new AssertionError("no chunk " + name);
  }

  @Test
  void vectorFilesAreOfThatSizeWithoutPicturesAndFonts() throws IOException {
    for (Print print : prints) {
      try (PDDocument pdf = Loader.loadPDF(print.pdf())) {
        double millimetres = pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4;
        assertThat(millimetres).isCloseTo(print.format().millimetres(), within(0.01));
        assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        assertOnlyLines(pdf.getPage(0).getResources());
      }
    }
  }

  private static void assertOnlyLines(PDResources resources) throws IOException {
    assertThat(resources.getFontNames()).isEmpty();
    for (COSName name : resources.getXObjectNames()) {
      assertThat(resources.getXObject(name)).isInstanceOf(PDFormXObject.class);
      assertOnlyLines(((PDFormXObject) resources.getXObject(name)).getResources());
    }
  }

  /** Drawn anew by another program, it looks like the picture. */
  @Test
  void vectorFilesShowWhatPicturesShow() throws IOException {
    Print print = prints.get(0);
    try (PDDocument pdf = Loader.loadPDF(print.pdf())) {
      double ofVector = ink(new PDFRenderer(pdf).renderImageWithDPI(0, 300));

      assertThat(ofVector / ink(image(print.png()))).isBetween(0.9, 1.1);
    }
  }

  private static double ink(BufferedImage image) {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    return (double) IntStream.of(pixels).filter(pixel -> (pixel >> 8 & 0xFF) < 190).count()
        / pixels.length;
  }

  @Test
  void greyPicturesHaveOneChannelAndTheGreysOfTheirDesigns() throws IOException {
    for (Print print : prints) {
      BufferedImage grey = image(print.grey());

      assertThat(grey.getColorModel().getNumComponents()).as(print.name()).isEqualTo(1);
      if (print.kind() == Picture.Kind.HOLE_EFFECT) {
        int[] levels =
            grey.getRaster().getSamples(0, 0, grey.getWidth(), grey.getHeight(), 0, (int[]) null);
        for (Hue hue : List.of(Hue.BLUE, Hue.VERMILION)) {
          assertThat(IntStream.of(levels).filter(level -> level == hue.grey()).count())
              .as(print.name() + " " + hue)
              .isGreaterThan(500);
        }
      }
    }
  }

  /** Lightness by CIE 15: a difference of 10 is seen side by side and from apart. */
  @Test
  void greysOfDesignsAreTellablyApart() {
    for (Hue one : OF_DESIGNS) {
      for (Hue other : OF_DESIGNS) {
        if (one != other) {
          assertThat(Math.abs(lightness(one.grey()) - lightness(other.grey())))
              .as(one + " and " + other)
              .isGreaterThan(10);
        }
      }
      assertThat(lightness(Hue.PALE.grey()) - lightness(one.grey())).isGreaterThan(10);
    }
    assertThat(lightness(Hue.VERMILION.grey()) - lightness(Hue.BLUE.grey())).isGreaterThan(40);
  }

  /** CIE L* of a level of sRGB (IEC 61966-2-1). */
  private static double lightness(int level) {
    double share = level / 255.0;
    double luminance = share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    return luminance <= 216.0 / 24_389 ? luminance * 24_389 / 27 : 116 * Math.cbrt(luminance) - 16;
  }

  @Test
  void sameResultsSameBytes() throws IOException {
    List<Print> first = prints(SampleResults.of(4, 2), 1);
    List<Print> again = prints(SampleResults.of(4, 2), 3);

    assertThat(again).hasSameSizeAs(first);
    for (int i = 0; i < first.size(); i++) {
      assertThat(again.get(i).png()).isEqualTo(first.get(i).png());
      assertThat(again.get(i).grey()).isEqualTo(first.get(i).grey());
      assertThat(again.get(i).pdf()).isEqualTo(first.get(i).pdf());
    }
  }

  @Test
  void hostileNamesArePrinted() throws IOException {
    Results results =
        SampleResults.named(
            "\u202E " + "design ".repeat(500), "CON", "🔥".repeat(90), "שלום\u202Eabc");

    assertThat(prints(results, 2)).extracting(Print::name).allMatch(it -> it.matches("[a-z0-9-]+"));
  }
}
