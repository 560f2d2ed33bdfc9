package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What to type into {@code sensors.csv} about a column of a log: into the row that it has there,
 * because a second one would not be heeded, else a row more.
 */
final class SensorFix {

  private static final Argument OPEN = Argument.word("");

  private final Optional<Sensor> known;
  private final String column;
  private final Map<String, Argument> cells = new LinkedHashMap<>();

  /**
   * Nothing to type yet.
   *
   * @param column what the sheet calls the column
   * @param known the row that the column has, if it has one
   */
  SensorFix(String column, Optional<Sensor> known) {
    this.column = column;
    this.known = known;
  }

  /** With text in a cell, which is left to be filled in where it is empty. */
  SensorFix with(Column<?> cell, String text) {
    return with(cell, Argument.word(text));
  }

  /** With an argument in a cell. */
  SensorFix with(Column<?> cell, Argument argument) {
    cells.put(cell.name(), argument);
    return this;
  }

  /** With a cell that is left to be filled in. */
  SensorFix open(Column<?> cell) {
    return with(cell, OPEN);
  }

  /** What to type; empty if the row is there and what to type into it is not known. */
  Optional<Fix> fix() {
    return known.isEmpty() ? Optional.of(row()) : change(known.get());
  }

  private Fix row() {
    Map<String, Argument> row = new LinkedHashMap<>();
    row.put(SensorsSheet.COLUMN.name(), Argument.word(column));
    row.putAll(cells);
    return new SheetRow(SensorsSheet.SCHEMA.file(), row);
  }

  // The row says the role already, or the column would not have it.
  private Optional<Fix> change(Sensor sensor) {
    Map<String, Argument> typed = new LinkedHashMap<>(cells);
    typed.remove(SensorsSheet.ROLE.name());
    typed.values().removeIf(OPEN::equals);
    return typed.isEmpty()
        ? Optional.empty()
        : Optional.of(new CellFix(sensor.row().place(), typed));
  }
}
