package fairboil.reports.page;

import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Shape;
import fairboil.analysis.heat.Loss;
import fairboil.analysis.heat.Restatement.Reference;
import fairboil.analysis.heat.ScalingBias;
import fairboil.analysis.heat.Surroundings;
import fairboil.analysis.normalise.Normalisation;
import fairboil.analysis.normalise.PooledLoss;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.quantity.Dimension;
import fairboil.ingest.sheet.Key;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.RestatingView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.HeatWords;
import fairboil.reports.words.Labels;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
        section.example().map(section::chain),
        section.example().map(section::budget));
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

  /** The run that the check was made on, else the first with a normalised boil time. */
  private Optional<RunResult> example() {
    Optional<Key> checked = normalisation.check().map(Normalisation.Check::run);
    return from.results().runs().stream()
        .filter(run -> checked.isEmpty() || checked.get().equals(run.run().key()))
        .filter(run -> run.energy().normalisedBoilTime().isKnown())
        .findFirst();
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
        "Run " + run.run().key().name() + ", from its readings to its normalised boil time",
        List.of(ColumnView.words("step"), ColumnView.words("value"), ColumnView.words("interval")),
        rows);
  }

  private TableView budget(RunResult run) {
    Figure figure = run.energy().normalisedBoilTime();
    double variance = Math.pow(figure.budget().combined(), 2);
    Map<List<Object>, BudgetLine> told = new LinkedHashMap<>();
    figure.budget().lines().stream()
        .filter(line -> line.contribution() > 0)
        .forEach(
            line ->
                told.merge(
                    List.of(line.influence(), line.sharedBy(), line.shape()),
                    line,
                    RestatingSection::together));
    List<List<CellView>> rows = told.values().stream().map(line -> line(line, variance)).toList();
    return TableView.grid(
        "budget-example",
        "What makes the normalised boil time of run " + run.run().key().name() + " uncertain",
        List.of(
            ColumnView.words("source"),
            from.cells().column("standard uncertainty", Dimension.DURATION),
            ColumnView.numbers("share of the variance, %"),
            ColumnView.words("taken as"),
            ColumnView.words("shared or independent")),
        rows);
  }

  /** Several parts of one source, such as those of the boil time, as one line. */
  private static BudgetLine together(BudgetLine one, BudgetLine other) {
    return one.scaledBy(Math.hypot(one.contribution(), other.contribution()) / one.contribution());
  }

  private List<CellView> line(BudgetLine line, double variance) {
    double share = 100 * line.contribution() * line.contribution() / variance;
    return List.of(
        CellView.of(Labels.of(line.influence())),
        from.cells().cell(line.contribution(), line.contribution() / 3, Dimension.DURATION),
        CellView.number(HeatWords.share(share), share),
        CellView.of(line.shape() == Shape.RECTANGULAR ? "rectangular" : "normal"),
        CellView.of(line.sharedBy().map(key -> "shared by " + key.name()).orElse("independent")));
  }
}
