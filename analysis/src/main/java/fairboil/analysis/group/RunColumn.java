package fairboil.analysis.group;

import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Choice;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SheetSchema;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A column of runs or of builds that a person named, whether the program knows it or not. Case,
 * spaces, hyphens and underscores of the name do not matter.
 *
 * @param name the name as the sheet has it
 * @param reader gives the cell of a run or of its build
 */
public record RunColumn(String name, Function<RunResult, Optional<Cell>> reader) {

  private static final Pattern JOINTS = Pattern.compile("[\\s_-]+");

  /**
   * A cell.
   *
   * @param text what stands in it: the answer as a choice is written, else the text as written
   * @param given the cell as it was read
   */
  public record Cell(String text, Given<?> given) {}

  /** The cell of a run, if it is filled in. */
  public Optional<Cell> cell(RunResult run) {
    return reader.apply(run);
  }

  /** The text in the cell of a run, if it is filled in. */
  public Optional<String> text(RunResult run) {
    return cell(run).map(Cell::text);
  }

  /** The column of that name: of runs, else of builds. */
  public static Optional<RunColumn> named(Study study, String name) {
    Optional<RunColumn> ofRuns =
        known(RunsSheet.SCHEMA, name, run -> run.run().row())
            .or(() -> extra(study.runs().stream().map(run -> run.row()), name, r -> r.run().row()));
    return ofRuns
        .or(() -> known(BuildsSheet.SCHEMA, name, run -> run.build().row()))
        .or(() -> extra(study.builds().stream().map(b -> b.row()), name, r -> r.build().row()));
  }

  private static Optional<RunColumn> known(
      SheetSchema schema, String name, Function<RunResult, Row> row) {
    for (Column<?> column : schema.columns()) {
      if (same(column.name(), name)) {
        return Optional.of(
            new RunColumn(column.name(), run -> row.apply(run).cell(column).map(RunColumn::cell)));
      }
    }
    return Optional.empty();
  }

  private static Optional<RunColumn> extra(
      Stream<Row> rows, String name, Function<RunResult, Row> row) {
    return rows.flatMap(each -> each.extras().keySet().stream())
        .filter(header -> same(header, name))
        .findFirst()
        .map(
            header ->
                new RunColumn(
                    header,
                    run ->
                        row.apply(run).extras().entrySet().stream()
                            .filter(entry -> same(entry.getKey(), name))
                            .findFirst()
                            .map(entry -> cell(entry.getValue()))));
  }

  private static Cell cell(Given<?> given) {
    String text = given.value() instanceof Choice choice ? choice.label() : given.written();
    return new Cell(text.strip(), given);
  }

  private static boolean same(String one, String other) {
    return plain(one).equals(plain(other));
  }

  private static String plain(String name) {
    return JOINTS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
  }
}
