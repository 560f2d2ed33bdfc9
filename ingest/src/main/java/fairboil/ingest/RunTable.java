package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SheetRows;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The runs of a study by their names. A run is known by its name; where builds repeat a name, by
 * build and name.
 */
final class RunTable {

  private final String study;
  private final Map<String, Set<String>> buildsByName = new LinkedHashMap<>();
  private final Map<Key, Run> runs = new LinkedHashMap<>();
  private final Map<String, Place> aside = new HashMap<>();
  private final Map<String, Place> taken = new HashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private RunTable(String study) {
    this.study = study;
  }

  static RunTable of(String study, SheetRows sheet) {
    RunTable table = new RunTable(study);
    for (Row row : sheet.aside()) {
      row.value(RunsSheet.RUN).ifPresent(name -> table.aside.putIfAbsent(name, row.place()));
    }
    for (Row row : sheet.rows()) {
      table
          .buildsByName
          .computeIfAbsent(row.get(RunsSheet.RUN), name -> new LinkedHashSet<>())
          .add(row.get(RunsSheet.BUILD));
    }
    sheet.rows().forEach(table::add);
    return table;
  }

  private void add(Row row) {
    String build = row.get(RunsSheet.BUILD);
    Key key = key(row.get(RunsSheet.RUN), build);
    Place before = taken.putIfAbsent(key.name(), row.place());
    if (before == null) {
      runs.put(key, new Run(key, new Key(study, build), row));
      return;
    }
    findings.add(
        Finding.error(
            row.place(RunsSheet.RUN),
            TableSays.SAME_RUN.with(Argument.cell(key.name()), TableSays.line(before)),
            TableSays.NAME_RUNS));
  }

  private Key key(String name, String build) {
    return new Key(study, isRepeated(name) ? build + "-" + name : name);
  }

  private boolean isRepeated(String name) {
    return buildsByName.getOrDefault(name, Set.of()).size() > 1;
  }

  /** The run of a name, as {@code runs.csv} gives it or as it is shown, and of a build if told. */
  Optional<Run> find(String name, Optional<String> build) {
    Optional<Run> shown = Optional.ofNullable(runs.get(new Key(study, name)));
    Optional<Run> found =
        build
            .flatMap(of -> Optional.ofNullable(runs.get(key(name, of))))
            .or(() -> isRepeated(name) && build.isEmpty() ? Optional.empty() : shown);
    return found.filter(run -> build.map(run.build().name()::equals).orElse(true));
  }

  /** Where the row of a run is that was set aside, if no other row has its name. */
  Optional<Place> aside(String name) {
    return Optional.ofNullable(aside.get(name)).filter(row -> !buildsByName.containsKey(name));
  }

  /** What is wrong with a name of a run that was not found, and a build if told. */
  Message problem(String name, Optional<String> build) {
    Argument run = Argument.name(name);
    if (build.isPresent()) {
      return TableSays.NO_RUN_OF_BUILD.with(run, Argument.name(build.get()));
    }
    return (buildsByName.containsKey(name) ? TableSays.WHICH_RUN : TableSays.NO_RUN).with(run);
  }

  /** What to do about a name of a run that was not found. */
  Message remedy(String name, Optional<String> build) {
    Set<String> builds = buildsByName.getOrDefault(name, Set.of());
    if (!builds.isEmpty()) {
      return (build.isEmpty() ? TableSays.ADD_BUILD_COLUMN : TableSays.IS_OF_BUILD)
          .with(Argument.names(List.copyOf(builds)));
    }
    return Nearest.orElse(
        name,
        buildsByName.keySet(),
        TableSays.ADD_RUN.with(Argument.sheet(RunsSheet.SCHEMA.file())));
  }

  List<Run> runs() {
    return List.copyOf(runs.values());
  }

  List<Finding> findings() {
    return findings;
  }
}
