package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** The builds of a study: those of {@code builds.csv}, then those that other sheets name. */
final class BuildTable {

  private final String study;
  private final Map<String, Build> builds = new LinkedHashMap<>();
  private final Set<String> listed;
  private final List<Finding> findings = new ArrayList<>();
  private final Repeats unlisted = new Repeats();

  private BuildTable(String study) {
    this.study = study;
    this.listed = new LinkedHashSet<>();
  }

  /** The rows of {@code builds.csv}; none if there is no such sheet. */
  static BuildTable of(String study, List<Row> rows) {
    BuildTable table = new BuildTable(study);
    rows.forEach(table::add);
    return table;
  }

  private void add(Row row) {
    String name = row.get(BuildsSheet.BUILD);
    if (!listed.add(name)) {
      findings.add(
          Finding.error(
              row.place(BuildsSheet.BUILD),
              TableSays.SAME_BUILD.with(
                  Argument.cell(name),
                  TableSays.line(Objects.requireNonNull(builds.get(name)).row().place())),
              TableSays.NAME_BUILDS));
      return;
    }
    builds.put(name, new Build(new Key(study, name), row));
  }

  /** Another sheet names a build at that place. */
  void named(String name, Place place) {
    builds.computeIfAbsent(name, key -> new Build(new Key(study, key), Row.at(place).build()));
    if (!listed.isEmpty() && !listed.contains(name)) {
      unlisted.add(name, place);
    }
  }

  boolean has(String name) {
    return builds.containsKey(name);
  }

  boolean hasDesign(String name) {
    return builds.values().stream()
        .anyMatch(build -> build.design().filter(name::equals).isPresent());
  }

  Optional<Build> find(String name) {
    return Optional.ofNullable(builds.get(name));
  }

  Optional<String> nearest(String name) {
    return Nearest.to(name, builds.keySet());
  }

  List<Build> builds() {
    return List.copyOf(builds.values());
  }

  List<Finding> findings() {
    List<Finding> all = new ArrayList<>(findings);
    unlisted.forEach(this::unlisted, all);
    return all;
  }

  private Finding unlisted(String name, Argument rows) {
    Argument sheet = Argument.sheet(BuildsSheet.SCHEMA.file());
    return Finding.warning(
            unlisted.first(name),
            TableSays.UNLISTED_BUILD.with(Argument.name(name), sheet, rows),
            Nearest.orElse(name, listed, TableSays.ADD_BUILD.with(sheet)))
        .mendedBy(SheetRow.of("builds.csv", Map.of("build", name)));
  }
}
