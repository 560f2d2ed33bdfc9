package fairboil.reports.chart;

/**
 * A place on a panel, in the units of its axes.
 *
 * @param x along
 * @param y up
 */
public record ChartPoint(double x, double y) {}
