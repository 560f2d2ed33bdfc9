package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.Box;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.Glyph;
import fairboil.reports.chart.Hue;
import fairboil.reports.chart.Mark;
import fairboil.reports.chart.Mark.Fill;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Points;
import fairboil.reports.chart.Sheet;
import fairboil.reports.chart.Spot;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelChartTest {

  private static final int ROW = 24;
  private static final int FOOT = 52;
  private static final int EDGE = 18;

  /**
   * XChart knows nothing of our axes: what it paints must lie where they say, also in low charts.
   */
  @ParameterizedTest
  @CsvSource({"1, -100, 0", "1, 150, 0", "2, 0, -1", "3, 200, -1", "10, 37.5, -8"})
  void pointsLieWhereTheAxesSay(int rows, double x, double y) throws ChartException {
    Mark dot = new Mark.Dots(Points.of(new Spot(x, y)), Hue.VERMILION, Glyph.CIRCLE, Fill.FULL, 12);
    Panel panel =
        new Panel(
            new Box(0, 0, 400, rows * ROW + FOOT + 2 * EDGE),
            "",
            "",
            new Axis("difference (s)", -200, 300, Ticks.NUMBERS),
            new Axis("", 0.5 - rows, 0.5, Ticks.NONE),
            EDGE,
            0,
            List.of(dot));
    Frame frame = Frame.of(panel);
    assertThat(frame.height()).isBetween(rows * ROW - 1.0, rows * ROW + 20.0);

    int height = panel.box().height();
    BufferedImage image =
        XChartPainter.withBundledFont()
            .image(new Sheet("", "", List.of(), List.of(panel), 400, height, 2));
    Spot centre = centreOfReds(image);
    assertThat(centre.x() / 2).isCloseTo(frame.x(x), within(0.5));
    assertThat(centre.y() / 2).isCloseTo(frame.y(y), within(0.5));
  }

  private static Spot centreOfReds(BufferedImage image) {
    double count = 0;
    double across = 0;
    double down = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int rgb = image.getRGB(x, y);
        if ((rgb >> 16 & 0xFF) > (rgb & 0xFF) + 100) {
          count++;
          across += x + 0.5;
          down += y + 0.5;
        }
      }
    }
    assertThat(count).isGreaterThan(100);
    return new Spot(across / count, down / count);
  }
}
