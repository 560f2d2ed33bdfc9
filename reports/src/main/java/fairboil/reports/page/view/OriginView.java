package fairboil.reports.page.view;

import java.util.List;

/**
 * Where the report came from.
 *
 * @param facts the program, its version and the seed
 * @param settings the settings
 * @param sources each file read, with its fingerprint
 */
public record OriginView(List<FactView> facts, TableView settings, TableView sources) {}
