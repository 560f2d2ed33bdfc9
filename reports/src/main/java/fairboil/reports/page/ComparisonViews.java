package fairboil.reports.page;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.precision.Repeatability;
import fairboil.ingest.quantity.Dimension;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.CompareWords;
import fairboil.reports.words.ScatterWords;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Differences between builds, designs and conditions, and scatter. */
final class ComparisonViews {

  /** The measures that are told in sentences; the tables hold all. */
  private static final List<Measure> TOLD =
      List.of(Measure.NORMALISED_BOIL_TIME, Measure.NORMALISED_PEAK);

  private ComparisonViews() {}

  static List<String> sentences(Materials from) {
    CompareWords words = CompareWords.of(from.results());
    Stream<String> means =
        from.results().comparisons().stream()
            .filter(pair -> pair.method().isHeadline())
            .filter(pair -> !pair.level().equals(Comparison.BUILD))
            .filter(pair -> TOLD.contains(pair.measure()))
            .map(words::sentence);
    Stream<String> ranks =
        from.results().rankComparisons().stream()
            .filter(pair -> !pair.level().equals(Comparison.BUILD))
            .filter(pair -> TOLD.contains(pair.measure()))
            .map(words::sentence);
    return Stream.concat(means, ranks).toList();
  }

  static TableView differences(Materials from) {
    return table(
        from,
        "differences",
        "Differences between designs and conditions",
        level -> !level.equals(Comparison.BUILD));
  }

  static TableView pairs(Materials from) {
    return table(from, "build-differences", "Differences between builds", Comparison.BUILD::equals);
  }

  private static TableView table(
      Materials from, String id, String caption, Predicate<String> level) {
    return TableView.list(
        id,
        caption,
        List.of(
            ColumnView.words("measure"),
            ColumnView.words("of"),
            ColumnView.words("one"),
            ColumnView.words("other"),
            ColumnView.numbers("one less other"),
            ColumnView.numbers("interval"),
            ColumnView.words("the one is"),
            ColumnView.numbers("called alike within"),
            ColumnView.words("method")),
        from.results().comparisons().stream()
            .filter(pair -> level.test(pair.level()))
            .filter(pair -> pair.method().isHeadline())
            .map(pair -> row(from, pair))
            .toList());
  }

  private static List<CellView> row(Materials from, Comparison pair) {
    Dimension dimension = pair.measure().dimension().ofDifference();
    double coarseness = CompareWords.of(from.results()).coarseness(pair);
    return List.of(
        CellView.of(pair.measure().label()),
        CellView.of(pair.level()),
        CellView.of(pair.a()),
        CellView.of(pair.b()),
        CellView.number(
            from.display().value(pair.difference(), coarseness, dimension), pair.difference()),
        CellView.of(from.display().range(pair.interval(), coarseness, dimension)),
        CellView.of(pair.verdict().label()),
        CellView.number(from.display().value(pair.margin(), coarseness, dimension), pair.margin()),
        CellView.of(pair.method().label()));
  }

  static TableView scatter(Materials from) {
    return TableView.list(
        "scatter",
        "Standard deviation of each source of scatter",
        List.of(
            ColumnView.words("measure"),
            ColumnView.words("from"),
            ColumnView.numbers("standard deviation"),
            ColumnView.numbers("interval"),
            ColumnView.numbers("two runs differ by up to"),
            ColumnView.numbers("builds"),
            ColumnView.numbers("runs")),
        from.results().repeatability().stream().map(scatter -> row(from, scatter)).toList());
  }

  private static List<CellView> row(Materials from, Repeatability scatter) {
    Dimension dimension = scatter.measure().dimension().ofDifference();
    double coarseness = scatter.sd() / 5;
    return List.of(
        CellView.of(scatter.measure().label()),
        CellView.of(ScatterWords.level(scatter)),
        CellView.number(ScatterWords.seen(from.display(), scatter), scatter.sd()),
        CellView.of(from.display().range(scatter.interval(), coarseness, dimension)),
        scatter.limit().isPresent()
            ? CellView.number(
                from.display().value(scatter.limit().getAsDouble(), coarseness, dimension),
                scatter.limit().getAsDouble())
            : CellView.of(""),
        FigureCells.count(scatter.builds()),
        FigureCells.count(scatter.runs()));
  }
}
