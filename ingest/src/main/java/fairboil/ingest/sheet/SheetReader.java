package fairboil.ingest.sheet;

import fairboil.ingest.finding.Finding;
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
        place,
        "this sheet is empty",
        "write a header with the column "
            + schema.columns().get(0).name()
            + " and rows under it, or delete the file");
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
        Words.count(header, "row")
            + " above the header "
            + (header == 1 ? "was" : "were")
            + " left out",
        "start such lines with #");
  }

  private void read(Header header, GridRow line, List<Column<?>> absent) {
    Place place = Place.of(grid.place().file(), line.line());
    if (isSummary(header, line)) {
      findings.add(
          Finding.note(
              place,
              "this row looks like a summary of others, so it was left out",
              "start such lines with #"));
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
        String.format(
            Locale.ROOT,
            "this row has %d cells but the header names %d columns, so it was set aside",
            width,
            columns),
        "put a cell that holds a comma into quotation marks, or give every column a header");
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
      read.remark().ifPresent(remark -> findings.add(Finding.note(cell, remark, "")));
    } else if (reading instanceof Reading.Refused<T> no) {
      refused.add(column);
      Finding finding = Finding.error(cell, no.problem() + consequence(column), no.remedy());
      row.unread(column, new Unread(text, finding));
      findings.add(finding);
    }
  }

  private static String consequence(Column<?> column) {
    if (column.need() == Column.Need.LEGIBLE) {
      return ", so this row is not used";
    }
    return column.fallback().isPresent() ? ", so the usual value was taken" : "";
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
                        "this row has no " + column.name() + ", so it was set aside",
                        "fill in the cell: " + column.meaning())));
  }
}
