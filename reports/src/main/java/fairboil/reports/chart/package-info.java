/**
 * What to draw. How it is drawn is in {@code chart.xchart}, the only package that knows the
 * charting library.
 *
 * <p>{@link fairboil.reports.chart.ChartBook} is the entry point: it makes every picture of a
 * report. Each kind of chart turns results into a {@link fairboil.reports.chart.Sheet} of {@link
 * fairboil.reports.chart.Panel}s with {@link fairboil.reports.chart.ChartMark}s on them, which a
 * {@link fairboil.reports.chart.Painter} draws; a {@link fairboil.reports.chart.Picture} is the
 * finished chart. For print, sheets are laid out in another {@link fairboil.reports.chart.Format}
 * and go to a {@link fairboil.reports.chart.Press}. To add a chart, make a sheet and plan it in the
 * book. {@link fairboil.reports.chart.Slugs} makes safe names for files.
 */
package fairboil.reports.chart;
