package fairboil.reports.page;

import fairboil.analysis.run.BoilState;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.RunView;
import fairboil.reports.page.view.RunsView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.page.view.Tone;
import fairboil.reports.words.RunWords;
import java.util.ArrayList;
import java.util.List;

/** Every run: a table of all, then each with its trace. */
final class RunsSection {

  private RunsSection() {}

  static RunsView of(Materials from) {
    RunArticle article = new RunArticle(from);
    Iterable<RunView> runs =
        () -> from.results().runs().stream().map(run -> article(article, from, run)).iterator();
    List<FigureView> traces = StudyCharts.all(from, Picture.Kind.TRACES);
    return new RunsView(table(from), traces, from.model().runsStandBeside() ? List.of() : runs);
  }

  private static RunView article(RunArticle article, Materials from, RunResult run) {
    return from.contain(
            "run " + run.run().key() + " on the page",
            () -> article.of(run, from.model().trace().apply(run)))
        .orElseGet(() -> article.lost(run));
  }

  private static TableView table(Materials from) {
    FigureCells cells = from.cells();
    List<ColumnView> columns =
        List.of(
            ColumnView.words("run"),
            ColumnView.words("build"),
            ColumnView.words("design"),
            ColumnView.words("counts"),
            ColumnView.words("outcome"),
            cells.column("normalised boil time", Dimension.DURATION),
            cells.column("boil time", Dimension.DURATION),
            cells.column("normalised peak", Dimension.TEMPERATURE),
            cells.column("peak", Dimension.TEMPERATURE),
            cells.column("hottest water", Dimension.TEMPERATURE),
            cells.column("net power", Dimension.POWER),
            cells.column("air", Dimension.TEMPERATURE),
            cells.column("water", Dimension.MASS));
    return TableView.list(
        "runs-table",
        "Every run of the study",
        columns,
        from.results().runs().stream().map(run -> row(from, run)).toList());
  }

  private static List<CellView> row(Materials from, RunResult run) {
    FigureCells cells = from.cells();
    String link =
        from.model().runsStandBeside() ? from.runNames().file(run) : "#" + from.runNames().of(run);
    List<CellView> row = new ArrayList<>();
    row.add(CellView.link(run.run().key().name(), link));
    row.add(CellView.of(run.build().key().name()));
    row.add(CellView.of(run.build().design().orElse("")));
    row.add(counts(run));
    row.add(outcome(run));
    row.add(cells.cell(run.energy().normalisedBoilTime()));
    row.add(cells.cell(run.boil().boilTime()));
    row.add(cells.cell(run.flame().normalisedPeak()));
    row.add(cells.cell(run.flame().peak()));
    row.add(cells.cell(run.boil().hottestWater()));
    row.add(cells.cell(run.energy().netPower()));
    row.add(cells.cell(run.conditions().ambient()));
    row.add(cells.cell(run.conditions().water()));
    return row;
  }

  private static CellView counts(RunResult run) {
    String counts = RunWords.counts(run.inclusion());
    return run.inclusion().includedForPeak() && run.inclusion().includedForBoil()
        ? CellView.of("yes")
        : CellView.badge(counts, Tone.LOOK);
  }

  /** How a run ended, as a word that is set off. */
  static CellView outcome(RunResult run) {
    return CellView.badge(run.state().label(), tone(run.state()));
  }

  private static Tone tone(BoilState state) {
    if (state instanceof BoilState.Boiled) {
      return Tone.PLAIN;
    }
    return state.outcome().isPresent() ? Tone.LOOK : Tone.QUIET;
  }
}
