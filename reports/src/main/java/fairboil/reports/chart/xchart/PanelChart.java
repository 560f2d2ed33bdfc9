package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.ChartPoint;
import fairboil.reports.chart.Dash;
import fairboil.reports.chart.Points;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;

/** A panel as a chart of XChart: its grid and axes, and everything on it that has no words. */
final class PanelChart extends XYChart {

  /** How long the marks of an axis are. */
  static final int TICK = 4;

  private static final Color NOTHING = new Color(255, 255, 255, 0);
  private static final int LONG = 100;

  private final Frame frame;
  private final Ruler along;
  private final Ruler up;
  private final List<ChartMark> marks;
  private final ChartInk ink;

  /** A chart whose plot has the corners of the frame. */
  PanelChart(Frame frame, Ruler along, Ruler up, List<ChartMark> marks, ChartInk ink) {
    super(along.pixels() + room(up), up.pixels() + room(along));
    this.frame = frame;
    this.along = along;
    this.up = up;
    this.marks = marks;
    this.ink = ink;
    style(getStyler());
  }

  /** What an axis takes beside the plot. */
  private static int room(Ruler axis) {
    return axis.axis().isWritten() ? TICK : 0;
  }

  /** Paints it where the frame is. */
  void paint(Graphics2D panel) {
    Graphics2D g = (Graphics2D) panel.create();
    g.translate(frame.left() - room(up), frame.top());
    paint(g, getWidth(), getHeight());
    g.dispose();
  }

  /**
   * Paints the axes before there are any marks: among their values XChart would look for places for
   * figures, over and over.
   */
  @Override
  public void paint(Graphics2D g, int width, int height) {
    seriesMap.clear();
    axisPair.paint(g);
    marks.forEach(this::add);
    plot.paint(g);
  }

  private void style(XYStyler styler) {
    styler.setPlotBackgroundColor(NOTHING);
    styler.setPlotBorderVisible(false);
    styler.setChartTitleVisible(false);
    styler.setLegendVisible(false);
    styler.setChartPadding(0);
    styler.setPlotMargin(0);
    styler.setPlotContentSize(1);
    styler.setAxisTitlesVisible(false);
    styler.setAxisTickPadding(0);
    styler.setAxisTickMarkLength(TICK);
    styler.setAxisTickMarksColor(ink.axis());
    styler.setAxisTickMarksStroke(ChartInk.HAIR);
    styler.setPlotGridLinesColor(ink.grid());
    styler.setPlotGridLinesStroke(new GridStroke(room(up), up.pixels()));
    styleAlong(styler);
    styleUp(styler);
  }

  private void styleAlong(XYStyler styler) {
    styler.setXAxisMin(along.from());
    styler.setXAxisMax(along.to());
    styler.setXAxisTicksVisible(along.axis().isWritten());
    styler.setPlotGridVerticalLinesVisible(along.isMarked());
    styler.setXAxisTickMarkSpacingHint(along.spacing());
    styler.setXAxisTickLabelsFormattingFunction(along::figure);
  }

  private void styleUp(XYStyler styler) {
    styler.setYAxisMin(up.from());
    styler.setYAxisMax(up.to());
    styler.setYAxisTicksVisible(up.axis().isWritten());
    styler.setPlotGridHorizontalLinesVisible(up.isMarked());
    styler.setYAxisTickMarkSpacingHint(up.spacing());
    styler.setYAxisTickLabelsFormattingFunction(up::figure);
  }

  private void add(ChartMark mark) {
    if (mark instanceof ChartMark.Band band) {
      addBand(band);
    } else if (mark instanceof ChartMark.Line line && !line.points().isBlank()) {
      addLine(line);
    } else if (mark instanceof ChartMark.Dots dots && !dots.points().isBlank()) {
      addDots(dots);
    } else if (mark instanceof ChartMark.Moment moment) {
      addPieces(upright(moment), ink.moment(), ChartInk.HAIR);
    }
  }

  private Points upright(ChartMark.Moment moment) {
    return Points.of(
        new ChartPoint(moment.x(), up.axis().from()), new ChartPoint(moment.x(), up.axis().to()));
  }

  private void addBand(ChartMark.Band band) {
    if (!band.outline().isBlank()) {
      XYSeries area = series(band.outline(), XYSeriesRenderStyle.PolygonArea);
      area.setFillColor(ink.color(band.hue()));
      area.setLineStyle(SeriesLines.NONE);
    }
  }

  /**
   * Adds a line, long and broken ones to be stroked in one go: XChart strokes others piece by
   * piece, which begins each dash anew and takes long.
   */
  private void addLine(ChartMark.Line line) {
    Points points = line.points();
    boolean inOneGo = points.size() > 2 && (line.dash() != Dash.SOLID || points.size() > LONG);
    addPieces(
            inOneGo ? fine(points) : points,
            ink.color(line.hue()),
            ChartInk.stroke(line.dash(), line.width()))
        .setSmooth(inOneGo);
  }

  private XYSeries addPieces(Points points, Color color, BasicStroke stroke) {
    XYSeries line = series(points, XYSeriesRenderStyle.Line);
    line.setLineColor(color);
    line.setLineStyle(stroke);
    return line;
  }

  /**
   * The same line with no piece wider than a pixel. What XChart strokes in one go it joins by
   * curves, which leave a piece to either side by a seventh of its width: then less than is seen.
   */
  private Points fine(Points points) {
    double pixel = frame.along().length() / frame.width();
    List<ChartPoint> fine = new ArrayList<>();
    fine.add(points.at(0));
    for (int i = 1; i < points.size(); i++) {
      ChartPoint from = points.at(i - 1);
      ChartPoint to = points.at(i);
      double pieces = Math.ceil(Math.abs(to.x() - from.x()) / pixel);
      for (int k = 1; k < pieces; k++) {
        fine.add(between(from, to, k / pieces));
      }
      fine.add(to);
    }
    return Points.of(fine);
  }

  private static ChartPoint between(ChartPoint from, ChartPoint to, double share) {
    return new ChartPoint(
        from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
  }

  private void addDots(ChartMark.Dots dots) {
    XYSeries points = series(dots.points(), XYSeriesRenderStyle.Scatter);
    points.setMarker(GlyphMarker.of(dots, ink));
  }

  private XYSeries series(Points points, XYSeriesRenderStyle style) {
    XYSeries series =
        addSeries(
            Integer.toString(seriesMap.size()), along.counted(points.x()), up.counted(points.y()));
    series.setXYSeriesRenderStyle(style);
    // XChart sets all of them, whether it uses them or not.
    series.setFillColor(ink.text());
    series.setMarkerColor(ink.text());
    return series;
  }
}
