package fairboil.ingest.sheet;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.grid.GridRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a reader should know of the columns of a sheet: missing, not known, without a header. */
final class ColumnFindings {

  private final SheetSchema schema;
  private final Header header;
  private final List<GridRow> body;

  private ColumnFindings(SheetSchema schema, Header header, List<GridRow> body) {
    this.schema = schema;
    this.header = header;
    this.body = body;
  }

  static List<Finding> of(SheetSchema schema, Header header, List<GridRow> body) {
    ColumnFindings columns = new ColumnFindings(schema, header, body);
    List<Finding> findings = new ArrayList<>(header.findings());
    header.missing().forEach(column -> findings.add(columns.missing(column)));
    findings.addAll(columns.unknown());
    findings.addAll(columns.withoutHeader());
    return findings;
  }

  /** The cells of a column that are not empty. */
  static List<String> filled(List<GridRow> body, int index) {
    return body.stream().map(row -> row.cell(index)).filter(cell -> !cell.isEmpty()).toList();
  }

  private Finding missing(Column<?> column) {
    Optional<String> written =
        header.cells().stream()
            .filter(cell -> cell.column().isEmpty())
            .map(HeaderCell::written)
            .filter(name -> isFor(column, name))
            .findFirst();
    Argument named = Argument.word(column.name());
    return Finding.error(
        header.place(),
        SheetSays.NO_COLUMN.with(named, Argument.count(body.size())),
        written
            .map(name -> SheetSays.RENAME.with(Argument.name(name), named))
            .orElseGet(() -> SheetSays.ADD_COLUMN.with(named, Argument.word(column.meaning()))));
  }

  private boolean isFor(Column<?> column, String written) {
    return HeaderName.of(written).stream()
        .flatMap(way -> Likely.name(schema, way.name()).stream())
        .anyMatch(column.name()::equals);
  }

  // A column that is likely one that is missing is named where that is said.
  private List<Finding> unknown() {
    List<Column<?>> missing = header.missing();
    return header.cells().stream()
        .filter(cell -> cell.column().isEmpty())
        .filter(cell -> missing.stream().noneMatch(column -> isFor(column, cell.written())))
        .map(this::unknown)
        .toList();
  }

  private Finding unknown(HeaderCell cell) {
    Finding finding = UnknownColumn.finding(header, schema, cell, filled(body, cell.index()));
    Optional<String> event =
        schema.equals(RunsSheet.SCHEMA)
            ? HeaderName.of(cell.written()).stream()
                .flatMap(way -> Likely.event(way.name()).stream())
                .findFirst()
            : Optional.empty();
    return event.flatMap(label -> mark(cell, label)).map(finding::mendedBy).orElse(finding);
  }

  // The first cell of a column that belongs into the stopwatch sheet, as a row of it.
  private Optional<SheetRow> mark(HeaderCell cell, String event) {
    HeaderCell run = header.known().get(RunsSheet.RUN);
    return body.stream()
        .filter(row -> !row.cell(cell.index()).isEmpty())
        .findFirst()
        .map(
            row -> {
              Map<String, String> cells = new LinkedHashMap<>();
              cells.put(StopwatchSheet.RUN.name(), run == null ? "" : row.cell(run.index()));
              cells.put(StopwatchSheet.EVENT.name(), event);
              cells.put(StopwatchSheet.TIME.name(), withUnit(row.cell(cell.index()), cell));
              return SheetRow.of(StopwatchSheet.SCHEMA.file(), cells);
            });
  }

  private static String withUnit(String text, HeaderCell cell) {
    String unit = HeaderName.of(cell.written()).get(0).unit();
    return unit.isEmpty() || text.indexOf(':') >= 0 ? text : text + " " + unit;
  }

  private List<Finding> withoutHeader() {
    return IntStream.range(0, header.width())
        .filter(header::isBlank)
        .filter(index -> !filled(body, index).isEmpty())
        .mapToObj(
            index ->
                Finding.warning(
                    header.place(index, "#" + (index + 1)),
                    SheetSays.NO_HEADER,
                    SheetSays.WRITE_HEADER))
        .toList();
  }
}
