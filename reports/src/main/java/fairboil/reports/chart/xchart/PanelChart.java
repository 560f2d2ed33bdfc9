package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Mark;
import fairboil.reports.chart.Points;
import fairboil.reports.chart.Spot;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** What lies between the axes of a panel and has no words, as a chart of XChart. */
final class PanelChart extends XYChart {

  private static final Color NOTHING = new Color(255, 255, 255, 0);

  private final Frame frame;
  private final Ink ink;

  /** A chart of those marks; its corners are those of the frame. */
  PanelChart(Frame frame, List<Mark> marks, Ink ink) {
    super((int) frame.width(), (int) frame.height());
    this.frame = frame;
    this.ink = ink;
    style(getStyler());
    marks.forEach(this::add);
  }

  /** Paints the marks over what is there. */
  void paint(Graphics2D panel) {
    if (!seriesMap.isEmpty()) {
      Graphics2D g = (Graphics2D) panel.create();
      g.translate(frame.left(), frame.top());
      paint(g, getWidth(), getHeight());
      g.dispose();
    }
  }

  /** The axes are painted already. */
  @Override
  protected void paintBackground(Graphics2D g) {}

  private void style(XYStyler styler) {
    styler.setPlotBackgroundColor(NOTHING);
    styler.setPlotBorderVisible(false);
    styler.setChartTitleVisible(false);
    styler.setLegendVisible(false);
    styler.setChartPadding(0);
    styler.setPlotMargin(0);
    styler.setPlotContentSize(1);
    styler.setAxisTitlesVisible(false);
    styler.setAxisTicksVisible(false);
    styler.setPlotGridLinesVisible(false);
    // All figures alike: XChart sees no use in looking for places for them.
    styler.setXAxisTickLabelsFormattingFunction(value -> "");
    styler.setYAxisTickLabelsFormattingFunction(value -> "");
    styler.setXAxisMin(frame.along().from());
    styler.setXAxisMax(frame.along().to());
    styler.setYAxisMin(frame.up().from());
    styler.setYAxisMax(frame.up().to());
  }

  private void add(Mark mark) {
    if (mark instanceof Mark.Band band) {
      addBand(band);
    } else if (mark instanceof Mark.Line line && !line.points().isBlank()) {
      addLine(line.points(), ink.color(line.hue()), Ink.stroke(line.dash(), line.width()));
    } else if (mark instanceof Mark.Dots dots && !dots.points().isBlank()) {
      addDots(dots);
    } else if (mark instanceof Mark.Moment moment) {
      Points upright =
          Points.of(new Spot(moment.x(), frame.up().from()), new Spot(moment.x(), frame.up().to()));
      addLine(upright, ink.moment(), Ink.HAIR);
    }
  }

  private void addBand(Mark.Band band) {
    if (!band.outline().isBlank()) {
      XYSeries area = series(band.outline());
      area.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
      area.setFillColor(ink.color(band.hue()));
      area.setLineStyle(SeriesLines.NONE);
      area.setMarker(SeriesMarkers.NONE);
    }
  }

  private void addLine(Points points, Color color, BasicStroke stroke) {
    XYSeries line = series(points);
    line.setXYSeriesRenderStyle(XYSeriesRenderStyle.Line);
    line.setLineColor(color);
    line.setLineStyle(stroke);
    line.setMarker(SeriesMarkers.NONE);
  }

  private void addDots(Mark.Dots dots) {
    XYSeries points = series(dots.points());
    points.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
    points.setMarker(GlyphMarker.of(dots, ink));
  }

  private XYSeries series(Points points) {
    return addSeries(Integer.toString(seriesMap.size()), points.x(), points.y());
  }
}
