/**
 * How charts are drawn: the only package that knows the charting library, AWT, the PNG encoder and,
 * for charts in print, PDFBox.
 *
 * <p>{@link fairboil.reports.chart.xchart.XChartPainter} is the entry point. A panel's axes, grid,
 * bands, lines and points are drawn by XChart ({@code PanelChart}); headings, keys and labels,
 * which must know how wide words are, are drawn over it ({@code SheetHeader}, {@code Labels},
 * {@code MomentLanes}). Text is set in the bundled DejaVu Sans ({@code Typeface}), so that pictures
 * do not depend on the fonts of the machine. A sheet is painted by {@code SheetPainter}, in colours
 * or greys ({@code Ink}), onto a picture or a PDF ({@code ChartPdf}).
 */
package fairboil.reports.chart.xchart;
