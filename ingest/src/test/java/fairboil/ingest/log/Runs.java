package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Runs and sensors for tests, without the sheets. */
final class Runs {

  static final String STUDY = "test";

  private Runs() {}

  /** A run called {@code A-1} whose log has that name. */
  static Run of(String log) {
    return of(log, Map.of());
  }

  /** A run with further cells: {@code log from} and {@code log to}. */
  static Run of(String log, Map<String, String> cells) {
    Row.Builder row = Row.at(Place.of("runs.csv", 2)).put(RunsSheet.RUN, "A-1");
    row.put(RunsSheet.BUILD, "A");
    if (!log.isEmpty()) {
      row.put(RunsSheet.LOG, log);
    }
    putMoment(row, RunsSheet.LOG_FROM, cells);
    putMoment(row, RunsSheet.LOG_TO, cells);
    return new Run(new Key(STUDY, "A-1"), new Key(STUDY, "A"), row.build());
  }

  private static void putMoment(
      Row.Builder row, Column<ClockTime> column, Map<String, String> cells) {
    String text = cells.get(column.name());
    if (text != null) {
      Place place = Place.of("runs.csv", 2, column.name());
      row.put(column, Given.of(moment(text), text, place));
    }
  }

  // h:mm:ss and m:ss as elapsed; with "at " before it, a time of day.
  private static ClockTime moment(String text) {
    boolean clock = text.startsWith("at ");
    double seconds = 0;
    for (String part : text.replace("at ", "").split(":", -1)) {
      seconds = seconds * 60 + Double.parseDouble(part);
    }
    return clock
        ? new ClockTime.TimeOfDay(seconds, Optional.empty(), 1)
        : new ClockTime.Elapsed(seconds, 1);
  }

  /** A row of sensors.csv: {@code column=T1; role=flame; unit=°F}. */
  static Sensor sensor(String text, int line) {
    Place place = Place.of("sensors.csv", line);
    Row.Builder row = Row.at(place);
    for (String cell : text.split(";", -1)) {
      String name = cell.substring(0, cell.indexOf('=')).strip();
      String value = cell.substring(cell.indexOf('=') + 1).strip();
      put(row, name, value);
    }
    return new Sensor(STUDY, row.build());
  }

  private static void put(Row.Builder row, String name, String value) {
    switch (name) {
      case "role" ->
          row.put(
              SensorsSheet.ROLE,
              Stream.of(Role.values())
                  .filter(role -> role.label().equals(value))
                  .findFirst()
                  .orElseThrow());
      case "day first" ->
          row.put(SensorsSheet.DAY_FIRST, value.equals("yes") ? YesNo.YES : YesNo.NO);
      case "scale" ->
          row.put(SensorsSheet.SCALE, new Quantity(Double.parseDouble(value), 0, Dimension.RATIO));
      case "resolution" ->
          row.put(
              SensorsSheet.RESOLUTION,
              new Quantity(Double.parseDouble(value), 0, Dimension.TEMPERATURE_DIFFERENCE));
      default -> row.put(text(name), value);
    }
  }

  private static Column<String> text(String name) {
    return List.of(
            SensorsSheet.COLUMN,
            SensorsSheet.LOG,
            SensorsSheet.SENSOR,
            SensorsSheet.TYPE,
            SensorsSheet.UNIT,
            SensorsSheet.COLD_JUNCTION)
        .stream()
        .filter(column -> column.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Rows of sensors.csv, one a line. */
  static List<Sensor> sensors(List<String> lines) {
    List<Sensor> sensors = new ArrayList<>();
    for (String line : lines) {
      sensors.add(sensor(line, sensors.size() + 2));
    }
    return sensors;
  }
}
