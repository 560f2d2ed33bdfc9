package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells people who write °F that results can be read in °F: nothing else would. */
final class ShownUnits {

  private static final List<Column<?>> TEMPERATURES =
      List.of(RunsSheet.AMBIENT, RunsSheet.WATER_START);

  private ShownUnits() {}

  /** A note where most temperatures of the runs are in °F and the setting was left out. */
  static List<Finding> note(Row settings, List<Run> runs) {
    List<Unit> units =
        runs.stream()
            .flatMap(run -> TEMPERATURES.stream().map(column -> unit(run.row(), column)))
            .flatMap(Optional::stream)
            .toList();
    long fahrenheit = units.stream().filter(unit -> unit == Unit.FAHRENHEIT).count();
    if (settings.cell(Settings.SHOW_UNITS).isPresent() || 2 * fahrenheit <= units.size()) {
      return List.of();
    }
    Map<String, String> row = new LinkedHashMap<>();
    row.put("setting", Settings.SHOW_UNITS.name());
    row.put("value", "US");
    return List.of(
        Finding.note(
                Place.of(Settings.SCHEMA.file()),
                TableSays.IN_FAHRENHEIT.with(),
                TableSays.SHOW_US.with(Argument.sheet(Settings.SCHEMA.file())))
            .mendedBy(SheetRow.of(Settings.SCHEMA.file(), row)));
  }

  private static Optional<Unit> unit(Row row, Column<?> column) {
    return row.cell(column).flatMap(given -> given.unit());
  }
}
