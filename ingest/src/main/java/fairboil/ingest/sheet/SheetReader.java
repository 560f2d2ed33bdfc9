package fairboil.ingest.sheet;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Reads the rows of a sheet by its schema. A cell that cannot be read is a finding and leaves the
 * rest of its row usable; a row without a required cell is set aside with a finding.
 */
public final class SheetReader {

  /** How many rows are searched for the header. */
  private static final int HEADER_WITHIN = 20;

  private static final Set<String> SUMMARIES =
      Set.of("average", "mean", "total", "sum", "min", "max", "sd", "stdev", "median", "count");

  private final SheetSchema schema;
  private final Grid grid;
  private final List<Row> rows = new ArrayList<>();
  private final List<Row> aside = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private SheetReader(SheetSchema schema, Grid grid) {
    this.schema = schema;
    this.grid = grid;
  }

  /** Reads a sheet of one row a thing. */
  public static SheetRows read(SheetSchema schema, Grid grid) {
    SheetReader reader = new SheetReader(schema, grid);
    reader.findings.addAll(grid.findings());
    if (grid.rows().isEmpty()) {
      reader.findings.add(empty(grid.place(), schema));
    } else {
      reader.readAll();
    }
    return new SheetRows(grid.place(), reader.rows, reader.aside, reader.findings);
  }

  static Finding empty(Place place, SheetSchema schema) {
    return Finding.warning(
        place, SheetSays.EMPTY, SheetSays.FILL.with(Argument.word(schema.columns().get(0).name())));
  }

  private void readAll() {
    int at = headerRow(schema, grid);
    if (at > 0) {
      findings.add(titles(grid, at));
    }
    Header header = Header.of(grid, schema, grid.rows().get(at));
    List<GridRow> body = grid.rows().subList(at + 1, grid.rows().size());
    findings.addAll(ColumnFindings.of(schema, header, body));
    List<Column<?>> missing = header.missing();
    body.forEach(row -> read(header, row, missing));
  }

  /** The row that names most columns; titles may stand above it. */
  static int headerRow(SheetSchema schema, Grid grid) {
    int best = 0;
    int most = 0;
    for (int i = 0; i < Math.min(HEADER_WITHIN, grid.rows().size()); i++) {
      int known = Header.known(schema, grid.rows().get(i));
      if (known > most) {
        best = i;
        most = known;
      }
    }
    return most >= 2 ? best : 0;
  }

  static Finding titles(Grid grid, int header) {
    return Finding.note(
        Place.of(grid.place().file(), grid.rows().get(0).line()),
        SheetSays.TITLES.with(Argument.count(header)),
        SheetSays.START_WITH_HASH);
  }

  private void read(Header header, GridRow line, List<Column<?>> absent) {
    Place place = Place.of(grid.place().file(), line.line());
    if (isSummary(header, line)) {
      findings.add(Finding.note(place, SheetSays.SUMMARY, SheetSays.START_WITH_HASH));
      return;
    }
    if (line.width() > header.width()) {
      findings.add(tooWide(place, line.width(), header.width()));
      return;
    }
    Row.Builder row = Row.at(place);
    Set<Column<?>> refused = new HashSet<>();
    header.cells().forEach(cell -> read(cell, line, place, row, refused));
    refused.addAll(absent);
    keep(row.build(), refused);
  }

  // A cell beyond the header means that a comma inside a cell has parted it, as in 20,5.
  private static Finding tooWide(Place place, int width, int columns) {
    return Finding.error(
        place,
        SheetSays.TOO_WIDE.with(Argument.count(width), Argument.count(columns)),
        SheetSays.QUOTE_OR_HEADER);
  }

  // Spreadsheets end in rows of averages: a name that says so, and no other required cell.
  private static boolean isSummary(Header header, GridRow line) {
    List<String> required =
        header.cells().stream()
            .filter(cell -> cell.column().filter(SheetReader::isRequired).isPresent())
            .map(cell -> line.cell(cell.index()))
            .toList();
    return required.size() > 1
        && SUMMARIES.contains(line.cell(0).toLowerCase(Locale.ROOT))
        && required.stream().filter(cell -> !cell.isEmpty()).count() <= 1;
  }

  private static boolean isRequired(Column<?> column) {
    return column.need() == Column.Need.REQUIRED;
  }

  private void read(
      HeaderCell header, GridRow line, Place place, Row.Builder row, Set<Column<?>> refused) {
    String text = line.cell(header.index());
    if (text.isEmpty()) {
      return;
    }
    Place cell = place.column(header.named());
    if (header.column().isEmpty()) {
      row.extra(header.written(), Given.of(text, text, cell));
    } else {
      CellContext context = new CellContext(header.unit(), grid.mark());
      put(header.column().get(), text, context, cell, row, refused);
    }
  }

  private <T> void put(
      Column<T> column,
      String text,
      CellContext context,
      Place cell,
      Row.Builder row,
      Set<Column<?>> refused) {
    Reading<T> reading = column.read(text, context);
    if (reading instanceof Reading.Read<T> read) {
      row.put(column, new Given<>(read.value(), text, read.unit(), cell));
      read.remark().ifPresent(remark -> findings.add(Finding.note(cell, remark, Message.NONE)));
    } else if (reading instanceof Reading.Refused<T> no) {
      refused.add(column);
      Finding finding = Finding.error(cell, consequence(column, no.problem()), no.remedy());
      row.unread(column, new Unread(text, finding));
      findings.add(finding);
    }
  }

  private static Message consequence(Column<?> column, Message problem) {
    if (column.need() == Column.Need.LEGIBLE) {
      return SheetSays.ROW_NOT_USED.with(Argument.clause(problem));
    }
    return column.fallback().isPresent()
        ? SheetSays.USUAL_VALUE.with(Argument.clause(problem))
        : problem;
  }

  // Of columns that are refused or absent it was said before why the row is set aside.
  private void keep(Row row, Set<Column<?>> refused) {
    List<Column<?>> missing =
        schema.columns().stream()
            .filter(SheetReader::isRequired)
            .filter(column -> row.cell(column).isEmpty())
            .toList();
    if (missing.isEmpty()) {
      rows.add(row);
      return;
    }
    aside.add(row);
    missing.stream()
        .filter(column -> !refused.contains(column))
        .forEach(
            column ->
                findings.add(
                    Finding.error(
                        row.place().column(column.name()),
                        SheetSays.NO_CELL.with(Argument.word(column.name())),
                        SheetSays.FILL_CELL.with(Argument.word(column.meaning())))));
  }
}
