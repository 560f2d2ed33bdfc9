package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.Box;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Tint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PanelChartTest {

  private static final int ROW = 24;
  private static final int FOOT = 52;
  private static final int EDGE = 18;

  /**
   * From three rows on, the fewest that charts of rows have, each row has its height or a little
   * more.
   */
  @ParameterizedTest
  @ValueSource(ints = {3, 4, 10})
  void fewRowsAreNotFoldedUp(int rows) throws ChartException {
    Panel panel =
        new Panel(
            new Box(0, 0, 400, rows * ROW + FOOT + 2 * EDGE),
            "",
            "",
            new Axis("difference (s)", -100, 200, Ticks.NUMBERS),
            new Axis("", 0.5 - rows, 0.5, Ticks.NONE),
            EDGE,
            0,
            List.of());
    PanelChart chart =
        new PanelChart(panel, List.of(), new Lettering(Typeface.load()), Ink.of(Tint.COLOUR));
    Graphics2D paper = new BufferedImage(400, 500, BufferedImage.TYPE_INT_RGB).createGraphics();
    chart.paint(paper);
    paper.dispose();
    Frame frame = chart.frame();
    assertThat(frame.bottom() - frame.top()).isBetween(rows * ROW - 1.0, rows * ROW + 20.0);
  }
}
