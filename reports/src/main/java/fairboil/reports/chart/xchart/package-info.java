/**
 * How charts are drawn: the only package that knows the charting library, AWT, the PNG encoder and,
 * for charts in print, PDFBox.
 *
 * <p>{@link fairboil.reports.chart.xchart.XChartPainter} is the entry point. A panel's room is
 * shared out by {@code Frame}. XChart draws its grid and axes and every band, line and point on it
 * ({@code PanelChart}); where it is to mark axes it is told by a {@code Ruler}. Words are written
 * over them, because who writes them must know how wide they are: figures and titles ({@code
 * AxisWords}), labels ({@code DirectLabels}), moments ({@code MomentLanes}), title and key of a
 * sheet ({@code SheetHeader}). Text is set in the bundled DejaVu Sans ({@code Typeface}), so that
 * pictures do not depend on the fonts of the machine. A sheet is painted by {@code SheetPainter},
 * in colours or greys ({@code ChartInk}), onto a picture or a PDF ({@code ChartPdf}).
 */
package fairboil.reports.chart.xchart;
