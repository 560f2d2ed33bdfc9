package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.Measure.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;

/** {@code builds.csv}: the runs of each build together, measure by measure. */
final class BuildsTable {

  static final TableSchema<BuildResult> SCHEMA =
      new TableSchema<>("builds.csv", "a build", columns());

  private BuildsTable() {}

  private static List<TableColumn<BuildResult>> columns() {
    List<TableColumn<BuildResult>> columns = new ArrayList<>();
    columns.add(text("build", "name of the build", build -> build.build().key().name()));
    columns.add(
        text("design", "plan that it was built to", build -> build.build().design().orElse("")));
    columns.add(count("runs", "runs that count", build -> OptionalLong.of(build.runs())));
    columns.add(
        count(
            "boiled",
            "those in which the water boiled",
            build -> OptionalLong.of(build.boils().boiled())));
    columns.add(
        count(
            "boil_not_seen",
            "those of which nobody and nothing saw whether it boiled; the share leaves them out",
            build -> OptionalLong.of(build.boils().unseen())));
    for (Measure measure : Measure.values()) {
      if (measure.level() != Level.STUDY) {
        columns.addAll(columns(measure));
      }
    }
    return columns;
  }

  private static List<TableColumn<BuildResult>> columns(Measure measure) {
    String of = measure.label();
    return List.of(
        column(measure, "mean", "mean of " + of, summary -> OptionalDouble.of(summary.mean())),
        column(measure, "sd", "standard deviation of " + of, Summary::sd),
        column(measure, "ci_low", "lower end of the interval of that mean", BuildsTable::low),
        column(measure, "ci_high", "upper end of the interval of that mean", BuildsTable::high));
  }

  private static TableColumn<BuildResult> column(
      Measure measure, String ending, String meaning, Function<Summary, OptionalDouble> get) {
    TableUnit unit = TableUnit.of(measure.dimension());
    String base = measure.label().replace(' ', '_') + "_" + ending;
    return number(
        unit.name(base),
        unit,
        meaning,
        build ->
            Optional.ofNullable(build.summaries().get(measure))
                .map(get)
                .orElse(OptionalDouble.empty()));
  }

  private static OptionalDouble low(Summary summary) {
    return Ends.low(summary.interval());
  }

  private static OptionalDouble high(Summary summary) {
    return Ends.high(summary.interval());
  }
}
