/**
 * How charts are drawn: the only package that knows the charting library, AWT, the PNG encoder and,
 * for charts in print, PDFBox.
 *
 * <p>{@link fairboil.reports.chart.xchart.XChartPainter} is the entry point. A panel's room is
 * shared out by {@code Frame}; its grid, axes and figures are drawn by {@code AxesPainter} at the
 * round values of {@code Graduation}; then its bands, lines and points by XChart ({@code
 * PanelChart}); headings, keys and labels, which must know how wide words are, over them ({@code
 * SheetHeader}, {@code Labels}, {@code MomentLanes}). Text is set in the bundled DejaVu Sans
 * ({@code Typeface}), so that pictures do not depend on the fonts of the machine. A sheet is
 * painted by {@code SheetPainter}, in colours or greys ({@code Ink}), onto a picture or a PDF
 * ({@code ChartPdf}).
 */
package fairboil.reports.chart.xchart;
