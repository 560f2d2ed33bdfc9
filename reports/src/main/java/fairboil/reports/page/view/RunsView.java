package fairboil.reports.page.view;

/**
 * Every run.
 *
 * @param table all of them in a table
 * @param runs each with its trace, made one at a time; none where each has a page of its own
 */
public record RunsView(TableView table, Iterable<RunView> runs) {}
