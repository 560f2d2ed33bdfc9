package fairboil.ingest.sheet;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Reading;
import fairboil.ingest.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code study.csv}, which has one setting a row, into a single row of {@link Settings}. */
public final class SettingsReader {

  private static final String SETTING = "setting";
  private static final String VALUE = "value";

  private final Grid grid;
  private final Map<String, Column<?>> columns = new HashMap<>();
  private final Map<Column<?>, Place> taken = new HashMap<>();
  private final Row.Builder row;
  private final List<Finding> findings = new ArrayList<>();
  private int settingAt;
  private int valueAt;

  private SettingsReader(Grid grid) {
    this.grid = grid;
    this.row = Row.at(grid.place());
    Settings.SCHEMA.columns().forEach(column -> columns.put(Words.key(column.name()), column));
  }

  /** The settings of a study without the sheet: each has its fallback or none. */
  public static Row none() {
    return Row.at(Place.of(Settings.SCHEMA.file())).build();
  }

  /** Reads the sheet; the result has exactly one row. */
  public static SheetRows read(Grid grid) {
    SettingsReader reader = new SettingsReader(grid);
    reader.findings.addAll(grid.findings());
    reader.readAll();
    return new SheetRows(grid.place(), List.of(reader.row.build()), List.of(), reader.findings);
  }

  private void readAll() {
    for (int i = 0; i < grid.rows().size(); i++) {
      List<String> header = grid.rows().get(i).cells().stream().map(Words::key).toList();
      if (header.contains(SETTING) && header.contains(VALUE)) {
        settingAt = header.indexOf(SETTING);
        valueAt = header.indexOf(VALUE);
        readRows(i + 1, header.size());
        return;
      }
    }
    findings.add(
        Finding.error(
            grid.place(),
            "there is no header with the columns setting and value, so the sheet was left out",
            "write setting,value as the first line, and one setting on each line under it"));
  }

  private void readRows(int from, int columnCount) {
    for (GridRow line : grid.rows().subList(from, grid.rows().size())) {
      Place place = Place.of(grid.place().file(), line.line());
      if (line.width() > columnCount) {
        findings.add(
            Finding.error(
                place,
                "this row has more cells than the header, so it was set aside",
                "put a value that holds a comma into quotation marks"));
      } else {
        read(line.cell(settingAt), line.cell(valueAt), place);
      }
    }
  }

  private void read(String name, String value, Place place) {
    for (HeaderName way : HeaderName.of(name)) {
      Column<?> column = columns.get(way.key());
      if (column != null) {
        read(column, name, way.unitOf(column.headerDimensions()), value, place);
        return;
      }
    }
    if (!name.isEmpty() || !value.isEmpty()) {
      findings.add(unknown(name, place));
    }
  }

  private Finding unknown(String name, Place place) {
    List<String> names = Settings.SCHEMA.columns().stream().map(Column::name).toList();
    return Finding.warning(
        place.column(grid.columns().of(settingAt, SETTING)),
        name.isEmpty()
            ? "this value has no setting"
            : Words.quoted(name) + " is not a setting that is known here, so it was left out",
        Nearest.to(name, names)
            .map(likely -> "did you mean " + likely + "?")
            .orElse("see the list of settings, or take the row out"));
  }

  private void read(Column<?> column, String name, Optional<Unit> unit, String value, Place place) {
    Place before = taken.putIfAbsent(column, place);
    if (before != null) {
      findings.add(
          Finding.error(
              place,
              Words.quoted(name)
                  + " was set before on line "
                  + before.line().orElse(0)
                  + ", so this row was set aside",
              "keep one of the two rows"));
    } else if (!value.isEmpty()) {
      put(
          column,
          value,
          new CellContext(unit, grid.mark()),
          place.column(grid.columns().of(valueAt, VALUE)));
    }
  }

  private <T> void put(Column<T> column, String text, CellContext context, Place cell) {
    Reading<T> reading = column.read(text, context);
    if (reading instanceof Reading.Read<T> read) {
      row.put(column, new Given<>(read.value(), text, read.unit(), cell));
      read.remark()
          .ifPresent(remark -> findings.add(Finding.note(cell, column.name() + ": " + remark, "")));
    } else if (reading instanceof Reading.Refused<T> no) {
      Finding finding =
          Finding.error(
              cell, column.name() + ": " + no.problem() + consequence(column), no.remedy());
      row.unread(column, new Unread(text, finding));
      findings.add(finding);
    }
  }

  /** The example of a setting is its usual value, where it has one. */
  private static String consequence(Column<?> column) {
    return column.fallback().isPresent()
        ? ", so the usual value, " + column.example() + ", was taken"
        : ", so it counts as not set";
  }
}
