package fairboil.reports.page.view;

import java.util.List;

/**
 * Builds side by side.
 *
 * @param figures their charts
 * @param table their means
 */
public record BuildsView(List<FigureView> figures, TableView table) {}
