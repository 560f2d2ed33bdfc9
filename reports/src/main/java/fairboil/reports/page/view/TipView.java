package fairboil.reports.page.view;

/**
 * A place on a chart and what it tells to a reader who comes near it.
 *
 * @param x how far from the left edge, in CSS pixels
 * @param y how far from the upper edge, in CSS pixels
 * @param radius how near is near
 * @param text what it tells
 */
public record TipView(int x, int y, int radius, String text) {}
