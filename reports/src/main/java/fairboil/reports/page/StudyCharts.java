package fairboil.reports.page;

import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Restating;
import fairboil.analysis.group.Summary;
import fairboil.analysis.layout.HoleError;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.ChartKey;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.CompareWords;
import fairboil.reports.words.Plural;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Charts of builds and of rings, with the numbers behind them. */
final class StudyCharts {

  private StudyCharts() {}

  /** All charts of a kind; where several show the same, the numbers stand behind the first. */
  static List<FigureView> all(Materials from, Picture.Kind kind) {
    Set<ChartKey> told = new HashSet<>();
    return from.charts(kind).stream()
        .map(
            picture ->
                told.add(picture.key())
                    ? figure(from, picture)
                    : Charts.figure(picture, Optional.empty()))
        .toList();
  }

  static FigureView figure(Materials from, Picture picture) {
    ChartKey key = picture.key();
    String id = Charts.id(picture) + "-data";
    Optional<TableView> data =
        switch (key.kind()) {
          case BUILDS -> key.measure().map(measure -> builds(from, measure, id));
          case RING_MAPS -> key.ring().map(ring -> holes(from, ring, id));
          case FOREST -> key.measure().map(measure -> pairs(from, measure, id));
          case NORMALISING -> Optional.of(normalising(from, id));
          case HOLE_EFFECT, RESIDUALS, HEAT_BALANCE, BALANCES, BUDGET, POWER, TRACES, RUN ->
              Optional.empty();
        };
    return Charts.figure(picture, data);
  }

  private static TableView pairs(Materials from, Measure measure, String id) {
    CompareWords words = CompareWords.of(from.results());
    return TableView.list(
        id,
        "Differences in " + measure.label(),
        List.of(
            ColumnView.words("compared"),
            ColumnView.words("difference"),
            ColumnView.words("with its interval"),
            ColumnView.words("verdict")),
        ChartBook.pairs(from.results(), measure).stream()
            .map(
                pair ->
                    List.of(
                        CellView.of(pair.level()),
                        CellView.of(CompareWords.less(pair)),
                        CellView.of(words.withInterval(pair)),
                        CellView.of(pair.verdict().label())))
            .toList());
  }

  private static TableView normalising(Materials from, String id) {
    FigureCells cells = from.cells();
    return TableView.list(
        id,
        "Boil time of each run as measured and normalised",
        List.of(
            ColumnView.words("run"),
            cells.column("air", Dimension.TEMPERATURE),
            cells.column("water", Dimension.MASS),
            cells.column("boil time", Dimension.DURATION),
            cells.column("normalised boil time", Dimension.DURATION)),
        Restating.of(from.results().runs()).runs().stream()
            .map(
                run ->
                    List.of(
                        CellView.of(run.run().key().name()),
                        cells.cell(run.conditions().ambient()),
                        cells.cell(run.conditions().water()),
                        cells.cell(run.boil().boilTime()),
                        cells.cell(run.energy().normalisedBoilTime())))
            .toList());
  }

  private static TableView builds(Materials from, Measure measure, String id) {
    Dimension dimension = measure.dimension();
    List<List<CellView>> rows =
        from.results().builds().stream()
            .filter(build -> build.summaries().containsKey(measure))
            .map(build -> row(from, build, measure))
            .toList();
    return TableView.list(
        id,
        Plural.sentence(measure.label()) + " of each build",
        List.of(
            ColumnView.words("build"),
            ColumnView.words("design"),
            ColumnView.numbers("runs"),
            from.cells().column("mean", dimension),
            from.cells().column("standard deviation", dimension.ofDifference()),
            from.cells().column("interval", dimension)),
        rows);
  }

  private static List<CellView> row(Materials from, BuildResult build, Measure measure) {
    Summary summary = build.summary(measure);
    Dimension dimension = measure.dimension();
    double coarseness = FigureCells.coarseness(summary.interval());
    return List.of(
        CellView.of(build.build().key().name()),
        CellView.of(build.build().design().orElse("")),
        FigureCells.count(summary.n()),
        from.cells().cell(summary.mean(), coarseness, dimension),
        summary.sd().isPresent()
            ? from.cells()
                .cell(
                    summary.sd().getAsDouble(),
                    summary.sd().getAsDouble() / 3,
                    dimension.ofDifference())
            : CellView.of(""),
        CellView.of(
            summary
                .interval()
                .map(interval -> from.display().range(interval, dimension))
                .orElse("")));
  }

  private static TableView holes(Materials from, String ring, String id) {
    List<List<CellView>> rows = new ArrayList<>();
    for (RingResult result : from.results().rings()) {
      if (result.ring().equals(ring)) {
        result.holes().forEach(hole -> rows.add(row(from, result, hole)));
      }
    }
    return TableView.list(
        id,
        "Each hole of ring " + ring,
        List.of(
            ColumnView.words("build"),
            ColumnView.numbers("hole"),
            from.cells().column("along the ring", Dimension.LENGTH),
            from.cells().column("in height", Dimension.LENGTH),
            from.cells().column("deviation", Dimension.LENGTH),
            from.cells().column("true position", Dimension.LENGTH)),
        rows);
  }

  private static List<CellView> row(Materials from, RingResult ring, HoleError hole) {
    return List.of(
        CellView.of(ring.build().name()),
        FigureCells.count(hole.number()),
        length(from, hole.alongError()),
        length(from, hole.heightError()),
        length(from, hole.deviation()),
        length(from, hole.truePosition()));
  }

  private static CellView length(Materials from, double held) {
    return from.cells().cell(held, FigureCells.OF_A_HOLE, Dimension.LENGTH);
  }
}
