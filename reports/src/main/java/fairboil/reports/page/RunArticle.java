package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.TimedEvent;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FactView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.RunView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.Labels;
import fairboil.reports.words.Names;
import fairboil.reports.words.RunWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One run: its trace, its figures, what is not known of it, and its row as written. */
final class RunArticle {

  private final Materials from;

  RunArticle(Materials from) {
    this.from = from;
  }

  RunView of(RunResult run, Optional<Picture> trace) {
    RunFigures figures = RunFigures.of(run, from.cells());
    Row row = run.run().row();
    return new RunView(
        from.runNames().of(run),
        run.run().key().name(),
        build(run),
        RunsSection.outcome(run),
        RunWords.exclusion(run.inclusion(), from.display()).orElse(""),
        trace.map(picture -> figure(run, picture)),
        figures.groups(),
        figures.unknown(),
        row.value(RunsSheet.NOTES).orElse(""),
        FindingViews.of(run.findings(), from.display()),
        sheet(row));
  }

  /** A run at whose part of the page the program failed. */
  RunView lost(RunResult run) {
    return new RunView(
        from.runNames().of(run),
        run.run().key().name(),
        "The program failed at this part of the page; the figures of the run stand in the tables.",
        RunsSection.outcome(run),
        "",
        Optional.empty(),
        List.of(),
        List.of(),
        "",
        List.of(),
        List.of());
  }

  private static String build(RunResult run) {
    String name = "build " + Names.inSentence(run.build().key().name());
    return run.build().design().map(design -> name + ", " + Names.inSentence(design)).orElse(name);
  }

  private FigureView figure(RunResult run, Picture picture) {
    String id = Charts.id(picture) + "-data";
    return Charts.figure(
        picture,
        run.timeline().events().isEmpty() ? Optional.empty() : Optional.of(events(run, id)));
  }

  private TableView events(RunResult run, String id) {
    return TableView.grid(
        id,
        "Events of run " + run.run().key().name(),
        List.of(
            ColumnView.words("event"),
            from.cells().column("time", Dimension.DURATION),
            ColumnView.words("seen by")),
        run.timeline().events().stream().map(this::row).toList());
  }

  private List<CellView> row(TimedEvent event) {
    return List.of(
        CellView.of(event.text()),
        from.cells().cell(event.seconds(), 1, Dimension.DURATION),
        CellView.of(Labels.of(event.seenBy())));
  }

  /** The cells of the sheet as written, but for the notes, which stand elsewhere. */
  private static List<FactView> sheet(Row row) {
    List<FactView> facts = new ArrayList<>();
    for (Column<?> column : RunsSheet.SCHEMA.columns()) {
      if (column != RunsSheet.NOTES) {
        row.cell(column)
            .ifPresent(cell -> facts.add(new FactView(column.name(), cell.written(), "")));
      }
    }
    row.extras().forEach((header, cell) -> facts.add(new FactView(header, cell.written(), "")));
    return facts;
  }
}
