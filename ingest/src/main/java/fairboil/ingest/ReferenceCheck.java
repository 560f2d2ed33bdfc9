package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.log.LogReader;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.ProtocolSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SensorsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Looks whether columns, rings and units that other sheets name are there. */
final class ReferenceCheck {

  private final Set<String> runColumns = new LinkedHashSet<>();
  private final Set<String> columns = new LinkedHashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  ReferenceCheck(List<Run> runs, List<Build> builds) {
    RunsSheet.SCHEMA.columns().stream().map(Column::name).forEach(runColumns::add);
    runs.forEach(run -> runColumns.addAll(run.row().extras().keySet()));
    columns.addAll(runColumns);
    BuildsSheet.SCHEMA.columns().stream().map(Column::name).forEach(columns::add);
    builds.forEach(build -> columns.addAll(build.row().extras().keySet()));
  }

  void settings(Row settings, RingTable rings) {
    settings.cell(Settings.COMPARE_BY).ifPresent(cell -> columns(cell, "compare by"));
    settings.cell(Settings.COVARIATES).ifPresent(cell -> columns(cell, "covariates"));
    settings
        .cell(Settings.HOLE_RING)
        .filter(ring -> !rings.has(ring.value()))
        .ifPresent(
            ring ->
                error(
                    ring.place(),
                    TableSays.NO_HOLE_RING.with(Argument.name(ring.value())),
                    rings.remedy(ring.value())));
  }

  private void columns(Given<List<String>> cell, String setting) {
    for (String name : cell.value()) {
      if (!has(columns, name)) {
        error(
            cell.place(),
            TableSays.NO_SUCH_COLUMN.with(
                Argument.word(setting),
                Argument.sheet(RunsSheet.SCHEMA.file()),
                Argument.sheet(BuildsSheet.SCHEMA.file()),
                Argument.name(name)),
            didYouMean(name, columns));
      }
    }
  }

  void protocol(List<Row> protocol) {
    for (Row row : protocol) {
      String name = row.get(ProtocolSheet.COLUMN);
      if (!has(runColumns, name)) {
        error(
            row.place(ProtocolSheet.COLUMN),
            TableSays.NO_COLUMN.with(Argument.sheet(RunsSheet.SCHEMA.file()), Argument.name(name)),
            didYouMean(name, runColumns));
      }
    }
  }

  void sensors(List<Row> sensors) {
    for (Row row : sensors) {
      row.cell(SensorsSheet.UNIT)
          .filter(unit -> !LogReader.readsUnit(row.get(SensorsSheet.ROLE), unit.value()))
          .ifPresent(
              unit ->
                  error(
                      unit.place(),
                      TableSays.NO_UNIT_OF_LOGS.with(Argument.cell(unit.value())),
                      TableSays.UNITS_OF_LOGS));
    }
  }

  private void error(Place place, Message problem, Message remedy) {
    findings.add(Finding.error(place, problem, remedy));
  }

  private static boolean has(Set<String> names, String name) {
    String key = key(name);
    return names.stream().map(ReferenceCheck::key).anyMatch(key::equals);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
  }

  private static Message didYouMean(String name, Set<String> names) {
    return Nearest.orElse(name, names, TableSays.CHECK_HEADER);
  }

  List<Finding> findings() {
    return findings;
  }
}
