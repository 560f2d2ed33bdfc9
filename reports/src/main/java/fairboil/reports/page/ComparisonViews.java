package fairboil.reports.page;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.precision.Repeatability;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.CompareWords;
import fairboil.reports.words.ScatterWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
        pair -> pair.method().isHeadline() && !pair.level().equals(Comparison.BUILD));
  }

  static TableView againstReference(Materials from) {
    return table(
        from,
        "reference-differences",
        "Differences from what claims compare with",
        pair -> pair.method() == Method.DUNNETT);
  }

  static TableView pairs(Materials from) {
    return table(
        from,
        "build-differences",
        "Differences between builds",
        pair -> pair.method().isHeadline() && pair.level().equals(Comparison.BUILD));
  }

  private static TableView table(
      Materials from, String id, String caption, Predicate<Comparison> which) {
    List<Comparison> pairs = from.results().comparisons().stream().filter(which).toList();
    Map<List<String>, Comparison> checks = checks(from);
    boolean sizes = pairs.stream().anyMatch(pair -> pair.effectInterval().isPresent());
    boolean checked = pairs.stream().anyMatch(pair -> checks.containsKey(key(pair)));
    List<ColumnView> columns = new ArrayList<>();
    columns.add(ColumnView.words("measure"));
    columns.add(ColumnView.words("of"));
    columns.add(ColumnView.words("one"));
    columns.add(ColumnView.words("other"));
    columns.add(ColumnView.numbers("one less other"));
    columns.add(ColumnView.numbers("interval"));
    columns.add(ColumnView.words("the one is"));
    columns.add(ColumnView.numbers("called alike within"));
    if (sizes) {
      columns.add(ColumnView.numbers("in standard deviations"));
    }
    columns.add(ColumnView.words("method"));
    if (checked) {
      columns.add(ColumnView.words("check: interval without pooling"));
    }
    List<List<CellView>> rows = new ArrayList<>();
    for (Comparison pair : pairs) {
      List<CellView> row = new ArrayList<>(row(from, pair));
      if (sizes) {
        row.add(size(pair));
      }
      row.add(CellView.of(pair.method().label()));
      if (checked) {
        row.add(check(from, pair, checks.get(key(pair))));
      }
      rows.add(row);
    }
    return TableView.list(id, caption, columns, rows);
  }

  /** The same pairs without pooling of their scatter. */
  private static Map<List<String>, Comparison> checks(Materials from) {
    Map<List<String>, Comparison> checks = new HashMap<>();
    from.results().comparisons().stream()
        .filter(ComparisonViews::isCheck)
        .forEach(pair -> checks.put(key(pair), pair));
    return checks;
  }

  private static boolean isCheck(Comparison pair) {
    return pair.method() == Method.GAMES_HOWELL || pair.method() == Method.WELCH_BUILD_MEANS;
  }

  private static List<String> key(Comparison pair) {
    return List.of(pair.measure().label(), pair.level(), pair.a(), pair.b());
  }

  private static CellView check(Materials from, Comparison pair, @Nullable Comparison check) {
    if (check == null || !pair.method().isHeadline()) {
      return CellView.of("");
    }
    double coarseness = CompareWords.of(from.results()).coarseness(check);
    Dimension dimension = check.measure().dimension().ofDifference();
    return CellView.of(
        from.display().range(check.interval(), coarseness, dimension)
            + " ("
            + check.method().label()
            + (check.verdict() == pair.verdict() ? "" : ": " + check.verdict().label())
            + ")");
  }

  /** Hedges' g with its interval. */
  private static CellView size(Comparison pair) {
    return pair.effectInterval()
        .map(interval -> CellView.number(CompareWords.size(pair, interval), pair.effectSize()))
        .orElse(CellView.of(""));
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
        CellView.number(from.display().value(pair.margin(), coarseness, dimension), pair.margin()));
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
            ColumnView.numbers("share of the mean"),
            ColumnView.numbers("two runs differ by up to"),
            ColumnView.numbers("builds"),
            ColumnView.numbers("runs")),
        from.results().repeatability().stream().map(scatter -> row(from, scatter)).toList());
  }

  private static List<CellView> row(Materials from, Repeatability scatter) {
    Dimension dimension = scatter.measure().dimension().ofDifference();
    double coarseness = ScatterWords.coarseness(scatter);
    return List.of(
        CellView.of(scatter.measure().label()),
        CellView.of(ScatterWords.level(scatter)),
        CellView.number(ScatterWords.seen(from.display(), scatter), scatter.sd()),
        CellView.of(from.display().range(scatter.interval(), coarseness, dimension)),
        orEmpty(ScatterWords.variation(scatter), scatter.relative()),
        orEmpty(ScatterWords.limit(from.display(), scatter), scatter.limit()),
        FigureCells.count(scatter.builds()),
        FigureCells.count(scatter.runs()));
  }

  private static CellView orEmpty(Optional<String> text, OptionalDouble sortedBy) {
    return text.isPresent() && sortedBy.isPresent()
        ? CellView.number(text.get(), sortedBy.getAsDouble())
        : CellView.of("");
  }
}
