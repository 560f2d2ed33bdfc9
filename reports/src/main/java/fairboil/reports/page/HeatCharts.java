package fairboil.reports.page;

import fairboil.analysis.figure.Shape;
import fairboil.analysis.run.BalanceResult;
import fairboil.analysis.run.BalanceResult.Fitted;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Key;
import fairboil.reports.chart.ChartKey;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.BudgetShare;
import fairboil.reports.words.HeatWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Charts of how heat was reckoned and of what is uncertain, with the numbers behind them. */
final class HeatCharts {

  private static final double FINE = 0.005;

  private final Materials from;
  private final FigureCells cells;

  private HeatCharts(Materials from) {
    this.from = from;
    this.cells = from.cells();
  }

  /** Those that were drawn. */
  static List<FigureView> of(Materials from) {
    HeatCharts charts = new HeatCharts(from);
    List<FigureView> figures = new ArrayList<>();
    HeatWords.example(from.results())
        .ifPresent(
            run -> {
              Key key = run.run().key();
              charts
                  .with(
                      ChartKey.ofRun(Picture.Kind.HEAT_BALANCE, key), id -> charts.course(run, id))
                  .ifPresent(figures::add);
              charts.with(ChartKey.of(Picture.Kind.BALANCES), charts::fits).ifPresent(figures::add);
              charts
                  .with(ChartKey.ofRun(Picture.Kind.BUDGET, key), id -> charts.budget(run, id))
                  .ifPresent(figures::add);
            });
    return figures;
  }

  private Optional<FigureView> with(ChartKey key, Function<String, TableView> data) {
    return from.chart(key)
        .map(
            picture ->
                Charts.figure(picture, Optional.of(data.apply(Charts.id(picture) + "-data"))));
  }

  private TableView course(RunResult run, String id) {
    List<List<CellView>> rows = new ArrayList<>();
    BalanceResult balance = run.energy().balance().orElseThrow();
    balance.heating().ifPresent(part -> add(rows, part, "heating"));
    balance.cooling().ifPresent(part -> add(rows, part, "cooling"));
    return TableView.list(
        id,
        "Water of run " + run.run().key().name() + " and its heat balance",
        List.of(
            ColumnView.words("part"),
            cells.column("time", Dimension.DURATION),
            cells.column("mean of readings", Dimension.TEMPERATURE),
            cells.column("heat balance", Dimension.TEMPERATURE),
            cells.column("reading less balance", Dimension.TEMPERATURE_DIFFERENCE)),
        rows);
  }

  private void add(List<List<CellView>> rows, Fitted part, String what) {
    for (int i = 0; i < part.residuals().length; i++) {
      double read = part.celsius()[i];
      double off = part.residuals()[i];
      rows.add(
          List.of(
              CellView.of(what),
              cells.cell(part.seconds()[i], 1, Dimension.DURATION),
              cells.cell(read, FINE, Dimension.TEMPERATURE),
              cells.cell(read - off, FINE, Dimension.TEMPERATURE),
              cells.cell(off, FINE, Dimension.TEMPERATURE_DIFFERENCE)));
    }
  }

  private TableView fits(String id) {
    return TableView.list(
        id,
        "How far readings lie from the heat balance of each run",
        List.of(
            ColumnView.words("run"),
            ColumnView.numbers("means while heating"),
            cells.column("their standard deviation", Dimension.TEMPERATURE_DIFFERENCE),
            ColumnView.numbers("means while cooling"),
            cells.column("their standard deviation", Dimension.TEMPERATURE_DIFFERENCE)),
        from.results().runs().stream()
            .filter(run -> run.energy().balance().isPresent())
            .map(this::row)
            .toList());
  }

  private List<CellView> row(RunResult run) {
    BalanceResult balance = run.energy().balance().orElseThrow();
    List<CellView> row = new ArrayList<>();
    row.add(CellView.of(run.run().key().name()));
    for (Optional<Fitted> part : List.of(balance.heating(), balance.cooling())) {
      row.add(part.map(fit -> FigureCells.count(fit.residuals().length)).orElse(CellView.of("")));
      row.add(
          part.map(fit -> cells.cell(fit.scatter(), FINE, Dimension.TEMPERATURE_DIFFERENCE))
              .orElse(CellView.of("")));
    }
    return row;
  }

  private TableView budget(RunResult run, String id) {
    List<List<CellView>> rows = new ArrayList<>();
    for (HeatWords.Uncertain figure : HeatWords.uncertain(run)) {
      figure.shares().forEach(share -> rows.add(row(figure, share)));
    }
    return TableView.list(
        id,
        "What makes results of run " + run.run().key().name() + " uncertain",
        List.of(
            ColumnView.words("result"),
            ColumnView.words("source"),
            ColumnView.numbers("standard uncertainty"),
            ColumnView.numbers("share of the variance, %"),
            ColumnView.words("taken as"),
            ColumnView.words("shared or independent")),
        rows);
  }

  private List<CellView> row(HeatWords.Uncertain figure, BudgetShare share) {
    double percent = 100 * share.share();
    return List.of(
        CellView.of(figure.name()),
        CellView.of(share.source()),
        CellView.number(figure.told(share.contribution(), from.display()), share.contribution()),
        CellView.number(HeatWords.share(percent), percent),
        CellView.of(share.shape() == Shape.RECTANGULAR ? "rectangular" : "normal"),
        CellView.of(share.sharedBy().map(key -> "shared by " + key.name()).orElse("independent")));
  }
}
