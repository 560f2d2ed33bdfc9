package fairboil.ingest.sheet;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
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
    findings.add(Finding.error(grid.place(), SheetSays.NO_SETTINGS, SheetSays.WRITE_SETTINGS));
  }

  private void readRows(int from, int columnCount) {
    for (GridRow line : grid.rows().subList(from, grid.rows().size())) {
      Place place = Place.of(grid.place().file(), line.line());
      if (line.width() > columnCount) {
        findings.add(Finding.error(place, SheetSays.WIDER_THAN_HEADER, SheetSays.QUOTE_VALUE));
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
            ? SheetSays.VALUE_ALONE
            : SheetSays.UNKNOWN_SETTING.with(Argument.cell(name)),
        Nearest.orElse(name, names, SheetSays.SEE_SETTINGS));
  }

  private void read(Column<?> column, String name, Optional<Unit> unit, String value, Place place) {
    Place before = taken.putIfAbsent(column, place);
    if (before != null) {
      findings.add(
          Finding.error(
              place,
              SheetSays.SET_BEFORE.with(
                  Argument.cell(name), Argument.number(before.line().orElse(0), 0)),
              SheetSays.KEEP_ONE_ROW));
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
          .ifPresent(remark -> findings.add(Finding.note(cell, of(column, remark), Message.NONE)));
    } else if (reading instanceof Reading.Refused<T> no) {
      Finding finding = Finding.error(cell, consequence(column, no.problem()), no.remedy());
      row.unread(column, new Unread(text, finding));
      findings.add(finding);
    }
  }

  /** The example of a setting is its usual value, where it has one. */
  private static Message consequence(Column<?> column, Message problem) {
    Argument name = Argument.word(column.name());
    return column.fallback().isPresent()
        ? SheetSays.USUAL_SETTING.with(
            name, Argument.clause(problem), Argument.word(column.example()))
        : SheetSays.NOT_SET.with(name, Argument.clause(problem));
  }

  private static Message of(Column<?> column, Message remark) {
    return SheetSays.OF_SETTING.with(Argument.word(column.name()), Argument.clause(remark));
  }
}
