package fairboil.reports.page;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.heat.Loss;
import fairboil.analysis.heat.Restatement.Reference;
import fairboil.analysis.heat.ScalingBias;
import fairboil.analysis.heat.Surroundings;
import fairboil.analysis.normalise.Normalisation;
import fairboil.analysis.normalise.PooledLoss;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.RestatingView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.HeatWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How boil times were restated: the method, the losses found, and one run step by step. */
final class RestatingSection {

  /** A usual pot, for telling what energy scaling leaves out where none was logged. */
  private static final Loss USUAL_LOSS = new Loss(1.2, 0);

  private static final double USUAL_POT = 190;

  private final Materials from;
  private final Normalisation normalisation;

  private RestatingSection(Materials from) {
    this.from = from;
    this.normalisation = from.results().normalisation();
  }

  static RestatingView of(Materials from) {
    RestatingSection section = new RestatingSection(from);
    return new RestatingView(
        HeatWords.of(section.normalisation, section.bias(), from.display()),
        section.losses(),
        HeatWords.example(from.results()).map(section::chain),
        HeatCharts.of(from));
  }

  private ScalingBias bias() {
    References to = from.results().references();
    Reference reference =
        new Reference(
            to.water(),
            OptionalDouble.of(USUAL_POT),
            to.start(),
            to.boilingPoint(),
            Surroundings.at(to.ambient()));
    return reference.isPossible()
        ? ScalingBias.over(reference, USUAL_LOSS)
        : new ScalingBias(0, 0, 0, 0, 0);
  }

  private Optional<TableView> losses() {
    if (normalisation.losses().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        TableView.list(
            "losses",
            "Heat lost by each pot as it cooled beside the fire",
            List.of(
                ColumnView.words("pot, lid and wind"),
                ColumnView.numbers("coolings"),
                from.cells().column("loss", Dimension.CONDUCTANCE),
                from.cells().column("scatter from run to run", Dimension.CONDUCTANCE),
                ColumnView.numbers("by steam, W/kPa")),
            normalisation.losses().stream().map(this::row).toList()));
  }

  private List<CellView> row(PooledLoss pool) {
    double perKelvin = pool.loss().perKelvin();
    double perKilopascal = 1000 * pool.loss().perPascal();
    return List.of(
        CellView.of(HeatWords.of(pool.group())),
        FigureCells.count(pool.coolings()),
        from.cells().cell(perKelvin, 0.02 * perKelvin, Dimension.CONDUCTANCE),
        from.cells().cell(pool.scatter(), pool.scatter() / 3, Dimension.CONDUCTANCE),
        CellView.number(HeatWords.perKilopascal(perKilopascal), perKilopascal));
  }

  private TableView chain(RunResult run) {
    List<List<CellView>> rows = new ArrayList<>();
    run.samples()
        .forEach(
            ledger ->
                rows.add(
                    List.of(
                        CellView.of("readings of " + ledger.channel()),
                        CellView.of(
                            ledger.samples().used() + " of " + ledger.samples().read() + " used"),
                        CellView.of(""))));
    Map<String, Figure> figures = HeatWords.chain(run);
    figures.forEach(
        (name, figure) -> {
          if (figure instanceof Figure.Known known) {
            rows.add(
                List.of(
                    CellView.of(name),
                    CellView.of(
                        from.display()
                            .value(
                                known.measured().value(),
                                known.measured().standardUncertainty(),
                                known.measured().dimension())),
                    CellView.of(
                        from.display()
                            .range(
                                known.interval(from.results().confidence()),
                                known.measured().dimension()))));
          }
        });
    return TableView.grid(
        "chain",
        "Run " + run.run().key().name() + ", from its readings to its results",
        List.of(ColumnView.words("step"), ColumnView.words("value"), ColumnView.words("interval")),
        rows);
  }
}
