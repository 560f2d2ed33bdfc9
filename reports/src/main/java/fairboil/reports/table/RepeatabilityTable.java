package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.precision.Repeatability;
import fairboil.reports.words.ScatterWords;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.ToDoubleFunction;

/** {@code repeatability.csv}: how far runs of a stove, and stoves of a design, differ. */
final class RepeatabilityTable {

  static final TableSchema<Repeatability> SCHEMA =
      new TableSchema<>(
          "repeatability.csv",
          "a source of scatter of one measure",
          List.of(
              text("measure", "measure that scatters", scatter -> scatter.measure().label()),
              text(
                  "level",
                  "run to run, build to build of a design, or between sites",
                  ScatterWords::level),
              held("sd", "standard deviation, in °C, s, W, kg or a share", Repeatability::sd),
              held("ci_low", "lower end of its interval", scatter -> scatter.interval().low()),
              held("ci_high", "upper end of its interval", scatter -> scatter.interval().high()),
              count(
                  "df",
                  "its degrees of freedom",
                  scatter -> OptionalLong.of(scatter.degreesOfFreedom()))));

  private RepeatabilityTable() {}

  private static TableColumn<Repeatability> held(
      String name, String meaning, ToDoubleFunction<Repeatability> get) {
    return number(
        name,
        TableUnit.NONE,
        meaning,
        scatter ->
            OptionalDouble.of(
                TableUnit.of(scatter.measure().dimension()).of(get.applyAsDouble(scatter))));
  }
}
