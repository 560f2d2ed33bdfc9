package fairboil.reports.page.view;

import java.util.List;

/**
 * Builds side by side.
 *
 * @param figures their charts
 * @param table their means
 * @param comparisons how designs and conditions compare, sentences
 * @param forests charts of differences
 * @param differences differences between designs and conditions
 * @param againstReference differences from what claims compare with
 * @param pairs differences between builds
 * @param scatter how far runs and builds scatter
 * @param sites what can be told of sites that repeated each other's burns, sentences
 * @param rounds what each site found of the same stove
 */
public record BuildsView(
    List<FigureView> figures,
    TableView table,
    List<String> comparisons,
    List<FigureView> forests,
    TableView differences,
    TableView againstReference,
    TableView pairs,
    TableView scatter,
    List<String> sites,
    TableView rounds) {}
