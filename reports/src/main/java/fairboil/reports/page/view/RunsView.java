package fairboil.reports.page.view;

import java.util.List;

/**
 * Every run.
 *
 * @param table all of them in a table
 * @param traces small traces of all; none where each stands here in full
 * @param runs each with its trace, made one at a time; none where each has a page of its own
 */
public record RunsView(TableView table, List<FigureView> traces, Iterable<RunView> runs) {}
