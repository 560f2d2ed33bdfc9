/**
 * What to draw. How it is drawn is in {@code chart.xchart}, the only package that knows the
 * charting library.
 *
 * <p>{@link fairboil.reports.chart.Picture} is a finished chart.
 */
package fairboil.reports.chart;
