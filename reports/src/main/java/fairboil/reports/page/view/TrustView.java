package fairboil.reports.page.view;

import java.util.List;

/**
 * Whether the data can be trusted.
 *
 * @param counts what was read and used, sentences
 * @param findings the findings, the worst first
 * @param logs what became of the lines of each log
 * @param readings what became of the readings of each channel
 */
public record TrustView(
    List<String> counts, List<FindingView> findings, TableView logs, TableView readings) {}
