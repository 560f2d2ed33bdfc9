package fairboil.reports.page;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.Choice;
import fairboil.ingest.quantity.Dimension;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.reports.words.Display;
import java.util.List;

/** The conditions that a fair comparison keeps alike. */
final class Conditions {

  private Conditions() {}

  static List<Condition> all(Display display) {
    return List.of(
        new MeasuredCondition(
            "air temperature", display, Dimension.TEMPERATURE, run -> run.conditions().ambient()),
        told(RunsSheet.WIND),
        told(RunsSheet.SCREEN),
        new MeasuredCondition("water", display, Dimension.MASS, run -> run.conditions().water()),
        new MeasuredCondition(
            "water temperature at the start",
            display,
            Dimension.TEMPERATURE,
            run -> run.conditions().waterStart()),
        told(RunsSheet.POT),
        told(RunsSheet.LID),
        measured(RunsSheet.POT_GAP, Dimension.LENGTH, display),
        told(RunsSheet.FUEL),
        told(RunsSheet.FUEL_FORM),
        told(RunsSheet.FUEL_BATCH),
        told(RunsSheet.FEED),
        measured(RunsSheet.FUEL_LOADED, Dimension.MASS, display),
        measured(RunsSheet.MOISTURE_WET_BASIS, Dimension.RATIO, display),
        told(RunsSheet.TESTER),
        told(RunsSheet.SITE),
        new DayCondition(),
        told(RunsSheet.STOVE_START),
        told(RunsSheet.BURN_NUMBER));
  }

  private static Condition told(Column<?> column) {
    return new ToldCondition(
        column.name(), run -> run.run().row().cell(column).map(Conditions::text));
  }

  private static String text(Given<?> given) {
    return given.value() instanceof Choice choice ? choice.label() : given.written();
  }

  private static Condition measured(Column<Quantity> column, Dimension dimension, Display display) {
    return new MeasuredCondition(
        column.name(), display, dimension, run -> figure(run, column, dimension));
  }

  private static Figure figure(RunResult run, Column<Quantity> column, Dimension dimension) {
    return run.run()
        .row()
        .value(column)
        .map(quantity -> Figure.known(Measured.exact(quantity.value(), dimension)))
        .orElse(Figure.unknown("the sheet does not tell"));
  }
}
