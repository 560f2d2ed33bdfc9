package fairboil.reports.page;

import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.Measure.Level;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FactView;
import fairboil.reports.page.view.MethodsView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.Display;
import fairboil.reports.words.Labels;
import fairboil.reports.words.Methods;
import fairboil.reports.words.Plural;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How each figure was worked out. */
final class MethodsSection {

  private MethodsSection() {}

  static MethodsView of(Materials from) {
    List<TableView> budgets = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      List<RunResult> runs = withBudget(from, measure);
      if (!runs.isEmpty()) {
        budgets.add(budget(from, measure, runs));
      }
    }
    return new MethodsView(
        Methods.ALL, references(from), assumptions(from), budgets, RestatingSection.of(from));
  }

  /** What is taken for granted, and what a bead of the usual peak leaves open. */
  private static List<String> assumptions(Materials from) {
    double[] peaks =
        from.results().runs().stream()
            .mapToDouble(run -> run.flame().peak().orNaN())
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    List<String> assumptions = new ArrayList<>(Methods.ASSUMPTIONS);
    if (peaks.length > 0) {
      assumptions.add(Methods.ofBareBead(peaks[peaks.length / 2], from.display()));
    }
    return assumptions;
  }

  private static List<FactView> references(Materials from) {
    References references = from.results().references();
    Display show = from.display();
    return List.of(
        new FactView("water", show.value(references.water(), 0, Dimension.MASS), ""),
        new FactView(
            "water at the start", show.value(references.start(), 0.5, Dimension.TEMPERATURE), ""),
        new FactView(
            "air temperature", show.value(references.ambient(), 0.5, Dimension.TEMPERATURE), ""),
        new FactView(
            "boiling point",
            show.value(references.boilingPoint(), 0.02, Dimension.TEMPERATURE),
            "at an altitude of " + show.altitude(references.altitude())),
        new FactView(
            "pot",
            from.results()
                .study()
                .settings()
                .value(Settings.REFERENCE_POT)
                .orElse("each run's own"),
            ""),
        new FactView("method asked for", references.normaliseBy().label(), ""),
        new FactView("confidence", Display.percent(from.results().confidence()), ""));
  }

  private static List<RunResult> withBudget(Materials from, Measure measure) {
    return measure.level() == Level.RUN
        ? from.results().runs().stream()
            .filter(run -> !measure.of(run).budget().lines().isEmpty())
            .toList()
        : List.of();
  }

  private static TableView budget(Materials from, Measure measure, List<RunResult> runs) {
    Dimension dimension = measure.dimension().ofDifference();
    Set<Influence> influences = EnumSet.noneOf(Influence.class);
    Set<Influence> shared = EnumSet.noneOf(Influence.class);
    for (RunResult run : runs) {
      for (BudgetLine line : measure.of(run).budget().lines()) {
        influences.add(line.influence());
        line.sharedBy().ifPresent(instrument -> shared.add(line.influence()));
      }
    }
    List<ColumnView> columns = new ArrayList<>();
    columns.add(ColumnView.words("run"));
    for (Influence influence : influences) {
      columns.add(
          ColumnView.numbers(
              Labels.of(influence) + (shared.contains(influence) ? " (shared)" : "")));
    }
    columns.add(ColumnView.numbers("together"));
    return TableView.list(
        "budget-" + measure.label().replace(' ', '-'),
        Plural.sentence(measure.label())
            + ": what each cause adds to the standard uncertainty"
            + unit(from, dimension),
        columns,
        runs.stream().map(run -> row(from, run, measure, influences)).toList());
  }

  private static String unit(Materials from, Dimension dimension) {
    return from.display().scale(dimension).isClock()
        ? ""
        : ", in " + from.display().symbol(dimension);
  }

  private static List<CellView> row(
      Materials from, RunResult run, Measure measure, Set<Influence> influences) {
    Figure figure = measure.of(run);
    Dimension dimension = measure.dimension().ofDifference();
    List<CellView> row = new ArrayList<>();
    row.add(CellView.of(run.run().key().name()));
    for (Influence influence : influences) {
      row.add(
          figure.budget().lines().stream()
              .filter(line -> line.influence() == influence)
              .findFirst()
              .map(line -> part(from, line.contribution(), dimension))
              .orElse(CellView.of("")));
    }
    row.add(part(from, figure.budget().combined(), dimension));
    return row;
  }

  /** A part of an uncertainty, to two digits. */
  private static CellView part(Materials from, double held, Dimension dimension) {
    return from.cells().cell(held, held / 3, dimension);
  }
}
