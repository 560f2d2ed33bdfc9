package fairboil.ingest.sheet;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.ColumnNames;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.quantity.UnitText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The header row of a sheet: which column of the grid is which column of the schema. */
final class Header {

  /** What people write in brackets to say how a time is written, which is not a unit. */
  private static final Pattern TIME_FORM =
      Pattern.compile("[hms]{1,2}(?::[hms]{1,2}){1,2}|min(?:utes)?:sec(?:onds)?");

  private static final Pattern NUMBER = Pattern.compile("#\\d+$");

  private final Place place;
  private final SheetSchema schema;
  private final GridRow row;
  private final ColumnNames names;
  private final Map<String, Column<?>> columns = new HashMap<>();
  // How often each header stands there that names no column of the schema.
  private final Map<String, Integer> unknown = new HashMap<>();
  private final List<HeaderCell> cells = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private Header(Place place, SheetSchema schema, GridRow row, ColumnNames names) {
    this.place = place;
    this.names = names;
    this.schema = schema;
    this.row = row;
    schema.columns().forEach(column -> columns.put(Words.key(column.name()), column));
  }

  /** Recognises the cells of a header row. */
  static Header of(Grid grid, SheetSchema schema, GridRow row) {
    return of(grid.place(), schema, row, grid.columns());
  }

  static Header of(Place file, SheetSchema schema, GridRow row, ColumnNames names) {
    Header header = new Header(Place.of(file.file(), row.line()), schema, row, names);
    Set<Column<?>> taken = new HashSet<>();
    for (int index = 0; index < row.cells().size(); index++) {
      header.add(index, row.cell(index), taken);
    }
    return header;
  }

  /** How many cells of a row name columns of the schema. */
  static int known(SheetSchema schema, GridRow row) {
    Header header = of(Place.of(schema.file()), schema, row, ColumnNames.HEADERS);
    return (int) header.cells.stream().filter(cell -> cell.column().isPresent()).count();
  }

  private void add(int index, String written, Set<Column<?>> taken) {
    if (written.isEmpty()) {
      return;
    }
    for (HeaderName way : HeaderName.of(written)) {
      Column<?> column = columns.get(way.key());
      if (column != null && (!way.hasUnit() || isBracketed(written) || takesUnits(column))) {
        addKnown(index, written, column, way, taken);
        return;
      }
    }
    String unique = unique(index, written);
    cells.add(
        new HeaderCell(index, unique, names.of(index, unique), Optional.empty(), Optional.empty()));
  }

  private static boolean isBracketed(String written) {
    return written.indexOf('(') >= 0 || written.indexOf('[') >= 0;
  }

  private static boolean takesUnits(Column<?> column) {
    return !column.headerDimensions().isEmpty();
  }

  private void addKnown(
      int index, String written, Column<?> column, HeaderName way, Set<Column<?>> taken) {
    if (!taken.add(column)) {
      findings.add(
          Finding.error(
              place(index, written),
              SheetSays.SECOND_COLUMN.with(Argument.word(column.name())),
              SheetSays.KEEP_ONE_COLUMN));
      return;
    }
    Optional<Unit> unit = way.unitOf(column.headerDimensions());
    if (way.hasUnit() && takesUnits(column) && unit.isEmpty()) {
      checkUnit(index, written, column, way.unit());
    }
    String named = names.of(index, written);
    cells.add(new HeaderCell(index, written, named, Optional.of(column), unit));
  }

  private void checkUnit(int index, String written, Column<?> column, String text) {
    if (TIME_FORM.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      return;
    }
    List<Unit> meanings = UnitText.meanings(text);
    long fitting =
        meanings.stream()
            .filter(unit -> column.headerDimensions().stream().anyMatch(unit::measures))
            .count();
    if (fitting > 1) {
      findings.add(ambiguous(place(index, written), text));
    } else if (!meanings.isEmpty()) {
      findings.add(
          Finding.error(
              place(index, written),
              SheetSays.WRONG_UNIT.with(Argument.cell(text), Argument.word(column.name())),
              SheetSays.FITTING_UNIT.with(Argument.word(column.example()))));
    } else {
      findings.add(
          Finding.note(
              place(index, written),
              SheetSays.UNKNOWN_UNIT.with(Argument.cell(text)),
              SheetSays.OWN_UNITS));
    }
  }

  private static Finding ambiguous(Place place, String text) {
    boolean ounces = Words.key(text).startsWith("o");
    return Finding.error(
        place,
        SheetSays.EITHER_UNIT.with(Argument.cell(text)),
        ounces ? SheetSays.OUNCES : SheetSays.UNIT_IN_FULL);
  }

  private String unique(int index, String written) {
    int before = unknown.getOrDefault(written, 0);
    unknown.merge(withoutNumber(written), 1, Integer::sum);
    if (before == 0) {
      return written;
    }
    String name = written + "#" + (before + 1);
    findings.add(
        Finding.note(
            place(index, written),
            SheetSays.SAME_HEADER.with(Argument.name(name)),
            SheetSays.OWN_HEADERS));
    return name;
  }

  // People number equal headers in our way too.
  private static String withoutNumber(String written) {
    return written.indexOf('#') < 0 ? written : NUMBER.matcher(written).replaceFirst("");
  }

  /** The cell of the header at an index. */
  Place place(int index, String written) {
    return place.column(names.of(index, written));
  }

  /** The line of the header. */
  Place place() {
    return place;
  }

  /** How many columns there are up to the last with a header. */
  int width() {
    return row.width();
  }

  /** Whether a column has no header. */
  boolean isBlank(int index) {
    return row.cell(index).isEmpty();
  }

  List<HeaderCell> cells() {
    return cells;
  }

  List<Finding> findings() {
    return findings;
  }

  /** Columns of the grid by the columns that they are. */
  Map<Column<?>, HeaderCell> known() {
    Map<Column<?>, HeaderCell> known = new LinkedHashMap<>();
    cells.forEach(cell -> cell.column().ifPresent(column -> known.put(column, cell)));
    return known;
  }

  /** Required columns that are not there. */
  List<Column<?>> missing() {
    Map<Column<?>, HeaderCell> known = known();
    return schema.columns().stream()
        .filter(column -> column.need() == Column.Need.REQUIRED && !known.containsKey(column))
        .toList();
  }

  /** The dimension of the unit in a header that is not known, where it has one. */
  static Optional<Dimension> dimension(String written) {
    return HeaderName.of(written).stream()
        .filter(HeaderName::hasUnit)
        .flatMap(way -> UnitText.meanings(way.unit()).stream())
        .map(Unit::dimension)
        .findFirst();
  }
}
