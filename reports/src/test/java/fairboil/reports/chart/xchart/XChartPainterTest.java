package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.SampleResults;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.Picture;
import fairboil.reports.words.Display;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What comes out of the painter: size, ink and sameness, never single pixels. */
class XChartPainterTest {

  private static XChartPainter painter;

  @BeforeAll
  static void load() throws ChartException {
    painter = XChartPainter.withBundledFont();
  }

  private static List<Picture> pictures(Results results, int threads) throws IOException {
    List<Picture> pictures = new ArrayList<>();
    ChartBook.of(results, Display.in(DisplayUnits.METRIC), new Faults())
        .draw(painter, threads, pictures::add);
    return pictures;
  }

  private static BufferedImage image(Picture picture) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(picture.png()));
  }

  /** The share of pixels that are darker than paper, grid and bands. */
  private static double ink(BufferedImage image) {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    long inked = IntStream.of(pixels).filter(pixel -> (pixel >> 8 & 0xFF) < 190).count();
    return (double) inked / pixels.length;
  }

  @Test
  void studyChartsAreTwiceAsSharpAsTraces() throws IOException {
    for (Picture picture : pictures(SampleResults.of(3, 2), 1)) {
      BufferedImage image = image(picture);
      int sharpness = picture.kind() == Picture.Kind.RUN ? 1 : 2;

      assertThat(image.getWidth())
          .isEqualTo(sharpness * picture.width())
          .isEqualTo(sharpness * 496);
      assertThat(image.getHeight()).isEqualTo(sharpness * picture.height());
      assertThat(ink(image)).as(picture.name()).isBetween(0.004, 0.2);
    }
  }

  @Test
  void sameResultsSameBytesInAnyLocaleZoneAndNumberOfThreads() throws IOException {
    Results results = SampleResults.of(4, 2);
    List<byte[]> plain = pictures(results, 1).stream().map(Picture::png).toList();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("th-TH-u-nu-thai"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));

      assertThat(pictures(results, 3).stream().map(Picture::png).toList())
          .usingElementComparator(Arrays::compare)
          .containsExactlyElementsOf(plain);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void hostileNamesAreDrawnAndNamedSafely() throws IOException {
    Results results =
        SampleResults.named(
            "\u202E " + "design ".repeat(2000),
            "CON",
            "con",
            "../../x",
            "🔥".repeat(300),
            "שלום\u202Eabc",
            "<script>\u0000\n\t\"'&");

    List<Picture> pictures = pictures(results, 2);

    assertThat(pictures).extracting(Picture::name).doesNotHaveDuplicates();
    assertThat(pictures)
        .extracting(Picture::name)
        .allMatch(name -> name.matches("[a-z0-9-]{1,80}"));
    for (Picture picture : pictures) {
      assertThat(ink(image(picture))).isBetween(0.002, 0.3);
    }
  }

  @Test
  void aStudyWithNothingInItHasNoPictures() throws IOException {
    assertThat(pictures(SampleResults.empty(), 2)).isEmpty();
  }

  @Test
  void captionsTellHowManyAndAlternativesWhatIsSeen() throws IOException {
    for (Picture picture : pictures(SampleResults.typical(DisplayUnits.METRIC), 2)) {
      assertThat(picture.caption()).as(picture.name()).endsWith(".").matches("(?s).*\\d.*");
      assertThat(picture.alternative()).as(picture.name()).endsWith(".").hasSizeGreaterThan(60);
    }
  }
}
