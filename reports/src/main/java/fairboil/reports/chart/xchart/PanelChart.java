package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.Mark;
import fairboil.reports.chart.Mark.Weight;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Points;
import fairboil.reports.chart.Spot;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** One panel as a chart of XChart: its axes, grid and everything on it that has no words. */
final class PanelChart {

  private static final int FIGURES_WIDTH = 50;
  private static final double UNEVEN = 0.3141;

  private final Panel panel;
  private final Ink ink;
  private final XYChart chart;
  private int series;

  /** The panel's axes, and those of its marks. */
  PanelChart(Panel panel, List<Mark> marks, Lettering lettering, Ink ink) {
    this.panel = panel;
    this.ink = ink;
    this.chart =
        new XYChartBuilder()
            .width(panel.box().width())
            .height(panel.box().height())
            .xAxisTitle(panel.x().title())
            .build();
    style(chart.getStyler(), lettering);
    addUnseen();
    marks.forEach(this::add);
  }

  /** Paints the panel with its upper left corner at the origin. */
  void paint(Graphics2D g) {
    chart.paint(g, panel.box().width(), panel.box().height());
  }

  /** Where the axes were painted; only after {@link #paint}. */
  Frame frame() {
    Axis x = panel.x();
    Axis y = panel.y();
    return new Frame(
        x,
        y,
        chart.getScreenXFromChart(x.from()),
        chart.getScreenXFromChart(x.to()),
        chart.getScreenYFromChart(y.to()),
        chart.getScreenYFromChart(y.from()));
  }

  private void style(XYStyler styler, Lettering lettering) {
    styler.setLocale(Locale.ROOT);
    styler.setTimezone(TimeZone.getTimeZone("UTC"));
    styler.setChartBackgroundColor(Ink.PAPER);
    styler.setPlotBackgroundColor(Ink.PAPER);
    styler.setPlotBorderVisible(false);
    styler.setChartTitleVisible(false);
    styler.setLegendVisible(false);
    styler.setChartPadding(panel.edge());
    styler.setPlotMargin(0);
    styler.setPlotContentSize(1);
    styler.setChartFontColor(ink.text());
    styler.setPlotGridLinesColor(ink.grid());
    styler.setPlotGridLinesStroke(Ink.HAIR);
    styleAxes(styler, lettering);
  }

  private void styleAxes(XYStyler styler, Lettering lettering) {
    Axis x = panel.x();
    Axis y = panel.y();
    styler.setXAxisMin(x.from());
    styler.setXAxisMax(x.to());
    styler.setYAxisMin(y.from());
    styler.setYAxisMax(y.to());
    styler.setAxisTitleFont(lettering.font(Weight.PLAIN, 13));
    styler.setAxisTickLabelsFont(lettering.font(Weight.PLAIN, 12.5f));
    styler.setAxisTickLabelsColor(ink.secondText());
    styler.setXAxisTitleColor(ink.text());
    styler.setAxisTickMarksColor(ink.axis());
    styler.setAxisTickMarksStroke(Ink.HAIR);
    styler.setAxisTickMarkLength(4);
    styler.setAxisTickPadding(5);
    styler.setAxisTitlePadding(6);
    styler.setYAxisTitleVisible(false);
    styler.setXAxisTitleVisible(!x.title().isEmpty());
    styler.setXAxisTicksVisible(x.ticks() != Ticks.NONE);
    styler.setYAxisTicksVisible(y.ticks() != Ticks.NONE);
    styler.setXAxisTickMarkSpacingHint(80);
    styler.setYAxisTickMarkSpacingHint(44);
    boolean grid = x.ticks() != Ticks.NONE || y.ticks() != Ticks.NONE;
    styler.setPlotGridVerticalLinesVisible(grid);
    styler.setPlotGridHorizontalLinesVisible(y.ticks() != Ticks.NONE);
    styler.setXAxisTickLabelsFormattingFunction(value -> Figures.of(x).text(value));
    styler.setYAxisTickLabelsFormattingFunction(value -> Figures.of(y).text(value));
    if (y.ticks() != Ticks.NONE) {
      styler.setYAxisLeftWidthHint(FIGURES_WIDTH);
    }
  }

  /**
   * Three unseen places, unevenly spaced. A chart without a series would have no axes, and where
   * all values are evenly spaced XChart writes figures at the values alone, that is often none.
   */
  private void addUnseen() {
    Axis x = panel.x();
    Axis y = panel.y();
    Points places =
        Points.of(
            new Spot(x.from(), y.from()),
            new Spot(x.from() + UNEVEN * x.length(), y.from() + UNEVEN * y.length()),
            new Spot(x.to(), y.to()));
    addLine(places, Ink.PAPER, SeriesLines.NONE);
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
          Points.of(new Spot(moment.x(), panel.y().from()), new Spot(moment.x(), panel.y().to()));
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
    series++;
    return chart.addSeries(Integer.toString(series), points.x(), points.y());
  }
}
