package fairboil.reports.chart;

import fairboil.reports.chart.ChartMark.Fill;
import java.util.List;

/**
 * A small picture drawn for nobody. The first picture takes ten times as long as the next, because
 * code and fonts are loaded for it: that can be done while something else is read.
 */
public final class Rehearsal {

  private static final Axis AXIS = new Axis("axis (°C)", 0, 10, Axis.Ticks.NUMBERS);

  private Rehearsal() {}

  /** Draws a picture and throws it away. */
  public static void of(Painter painter) {
    Points points = Points.of(new double[] {1, 5, 9}, new double[] {2, 8, 3});
    List<ChartMark> marks =
        List.of(
            new ChartMark.Line(points, Hue.BLUE, Dash.DASHED, 2),
            new ChartMark.Dots(points, Hue.VERMILION, Glyph.DIAMOND, Fill.HOLLOW, 10),
            new ChartMark.Moment(4, "moment"));
    Panel panel = new Panel(new Box(0, 60, 300, 140), "heading", "note", AXIS, AXIS, 0, 1, marks);
    painter.png(new Sheet("title", "subtitle", List.of(), List.of(panel), 300, 200, 1));
  }
}
