package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.Box;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartPoint;
import fairboil.reports.chart.Dash;
import fairboil.reports.chart.Glyph;
import fairboil.reports.chart.Hue;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Points;
import fairboil.reports.chart.Sheet;
import fairboil.reports.chart.Tint;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelChartTest {

  private static final int ROW = 24;
  private static final int FOOT = 52;
  private static final int EDGE = 18;
  private static final int SHARP = 2;
  private static final ChartInk INK = ChartInk.of(Tint.COLOUR);
  // Halves of a pixel are rounded either way.
  private static final Comparator<Double> A_PIXEL_APART =
      (one, other) -> Math.abs(one - other) <= 1 ? 0 : Double.compare(one, other);
  private static final Axis PERCENT = new Axis("", 0, 100, Ticks.NUMBERS);

  /**
   * XChart knows nothing of our axes: what it paints must lie where they say, also in low charts.
   */
  @ParameterizedTest
  @CsvSource({"1, -100, 0", "1, 150, 0", "2, 0, -1", "3, 200, -1", "10, 37.5, -8"})
  void pointsLieWhereTheAxesSay(int rows, double x, double y) throws ChartException {
    ChartMark dot =
        new ChartMark.Dots(
            Points.of(new ChartPoint(x, y)), Hue.VERMILION, Glyph.CIRCLE, Fill.FULL, 12);
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

    BufferedImage image = image(panel);
    ChartPoint centre = centreOfReds(image);
    assertThat(centre.x()).isCloseTo(frame.x(x), within(0.5));
    assertThat(centre.y()).isCloseTo(frame.y(y), within(0.5));
  }

  private static BufferedImage image(Panel panel) throws ChartException {
    int width = panel.box().width();
    int height = panel.box().height();
    return XChartPainter.withBundledFont()
        .image(new Sheet("", "", List.of(), List.of(panel), width, height, SHARP));
  }

  private static ChartPoint centreOfReds(BufferedImage image) {
    List<ChartPoint> reds = reds(image);
    assertThat(reds).hasSizeGreaterThan(100);
    return new ChartPoint(
        reds.stream().mapToDouble(ChartPoint::x).average().orElseThrow(),
        reds.stream().mapToDouble(ChartPoint::y).average().orElseThrow());
  }

  /** The middles of red pixels, in CSS pixels. */
  private static List<ChartPoint> reds(BufferedImage image) {
    List<ChartPoint> reds = new ArrayList<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (isRed(image.getRGB(x, y))) {
          reds.add(new ChartPoint((x + 0.5) / SHARP, (y + 0.5) / SHARP));
        }
      }
    }
    return reds;
  }

  private static boolean isRed(int rgb) {
    return (rgb >> 16 & 0xFF) > (rgb & 0xFF) + 100;
  }

  /** XChart marks axes as it sees fit: it must do so where figures are written, and only there. */
  @ParameterizedTest
  @CsvSource({
    "NUMBERS, 0, 4.4",
    "NUMBERS, -0.07, 0.09",
    "NUMBERS, -1250, 900",
    "NUMBERS, 99990, 100010",
    "NUMBERS, 0, 9e-4",
    "NUMBERS, 20, 60",
    "CLOCK, 7.1, 17.5",
    "CLOCK, -1.5, 2",
    "CLOCK, 0, 300"
  })
  void gridLinesLieAtTheFigures(Ticks ticks, double from, double to) throws ChartException {
    AxisWords words = new AxisWords(new ChartLettering(Typeface.load()), INK);
    Axis axis = new Axis("", from, to, ticks);
    for (int size : List.of(110, 165, 240, 420, 900)) {
      Panel panel = panel(size, axis, List.of());
      Frame frame = Frame.of(panel);
      BufferedImage image = image(panel);

      int row = (int) (SHARP * frame.bottom()) - 3;
      IntPredicate upright = x -> isGrid(image, x, row) && isGrid(image, x, row - 1);
      assertThat(sharp(size, upright))
          .as("along %s over %d", axis, size)
          .usingElementComparator(A_PIXEL_APART)
          .isEqualTo(inside(words.along(frame), frame::x, frame.left(), frame.right()));
      int column = (int) (SHARP * frame.right()) - 3;
      IntPredicate level = y -> isGrid(image, column, y) && isGrid(image, column - 1, y);
      assertThat(sharp(size, level))
          .as("up %s over %d", axis, size)
          .usingElementComparator(A_PIXEL_APART)
          .isEqualTo(inside(words.up(frame), frame::y, frame.top(), frame.bottom()));
    }
  }

  private static Panel panel(int size, Axis axis, List<ChartMark> marks) {
    return new Panel(new Box(0, 0, size, size), "", "", axis, axis, EDGE, 0, marks);
  }

  private static boolean isGrid(BufferedImage image, int x, int y) {
    return image.getRGB(x, y) == INK.grid().getRGB();
  }

  /** The middles of lines that are just a CSS pixel wide. */
  private static List<Double> sharp(int size, IntPredicate isLine) {
    List<Double> middles = new ArrayList<>();
    for (int i = 2; i < SHARP * size - 1; i++) {
      if (isLine.test(i - 1) && isLine.test(i) && !isLine.test(i - 2) && !isLine.test(i + 1)) {
        middles.add((double) i / SHARP);
      }
    }
    return middles;
  }

  private static List<Double> inside(
      Ruler ruler, DoubleUnaryOperator place, double from, double to) {
    return ruler.marks().values().stream()
        .map(value -> Math.rint(place.applyAsDouble(value)))
        .filter(at -> at > from && at < to)
        .sorted()
        .toList();
  }

  /** What XChart strokes in one go it joins by curves: they must not be seen. */
  @Test
  void brokenLinesRunStraightFromPlaceToPlace() throws ChartException {
    Points corners = Points.of(new double[] {5, 45, 50, 55, 90}, new double[] {10, 90, 20, 20, 60});
    for (Dash dash : List.of(Dash.DASHED, Dash.DOTTED)) {
      Panel panel =
          panel(420, PERCENT, List.of(new ChartMark.Line(corners, Hue.VERMILION, dash, 2)));
      Frame frame = Frame.of(panel);
      for (ChartPoint red : reds(image(panel))) {
        assertThat(distance(red, corners, frame)).isLessThan(1.5);
      }
    }
  }

  private static double distance(ChartPoint place, Points corners, Frame frame) {
    double least = Double.MAX_VALUE;
    for (int i = 1; i < corners.size(); i++) {
      ChartPoint from = corners.at(i - 1);
      ChartPoint to = corners.at(i);
      least =
          Math.min(
              least,
              Line2D.ptSegDist(
                  frame.x(from.x()),
                  frame.y(from.y()),
                  frame.x(to.x()),
                  frame.y(to.y()),
                  place.x(),
                  place.y()));
    }
    return least;
  }

  /** A dash of 7 and a gap of 4 pixels: begun anew at each place, there would be no gap. */
  @Test
  void dashesRunOnOverPlaces() throws ChartException {
    double[] x = IntStream.rangeClosed(0, 99).asDoubleStream().toArray();
    double[] y = DoubleStream.generate(() -> 50).limit(x.length).toArray();
    ChartMark line = new ChartMark.Line(Points.of(x, y), Hue.VERMILION, Dash.DASHED, 2);
    Panel panel = panel(420, PERCENT, List.of(line));
    Frame frame = Frame.of(panel);
    BufferedImage image = image(panel);

    int row = (int) (SHARP * frame.y(50));
    long begun =
        IntStream.range(1, image.getWidth())
            .filter(at -> isRed(image.getRGB(at, row)) && !isRed(image.getRGB(at - 1, row)))
            .count();

    assertThat((double) begun).isCloseTo((frame.x(99) - frame.x(0)) / 11, within(1.0));
  }

  /** Small panels have no axes; what they show is drawn all the same, the first at the bottom. */
  @Test
  void panelsWithoutAxesShowTheirMarksInOrder() throws ChartException {
    Axis bare = new Axis("", 0, 100, Ticks.NONE);
    double[] x = IntStream.rangeClosed(0, 200).mapToDouble(i -> i / 2.0).toArray();
    double[] y = DoubleStream.generate(() -> 50).limit(x.length).toArray();
    ChartMark line = new ChartMark.Line(Points.of(x, y), Hue.VERMILION, Dash.SOLID, 10);
    ChartPoint middle = new ChartPoint(50, 50);
    ChartMark dot = new ChartMark.Dots(Points.of(middle), Hue.BLUE, Glyph.SQUARE, Fill.FULL, 8);
    Panel panel = panel(new Box(0, 0, 108, 40), bare, List.of(line, dot));
    Frame frame = Frame.of(panel);
    int centreX = (int) (SHARP * frame.x(50));
    int centreY = (int) (SHARP * frame.y(50));

    assertThat(image(panel).getRGB(centreX, centreY)).isEqualTo(INK.color(Hue.BLUE).getRGB());
    Panel turned = panel(panel.box(), bare, List.of(dot, line));
    assertThat(image(turned).getRGB(centreX, centreY)).isEqualTo(INK.color(Hue.VERMILION).getRGB());
  }

  private static Panel panel(Box box, Axis axis, List<ChartMark> marks) {
    return new Panel(box, "", "", axis, axis, 0, 0, marks);
  }
}
