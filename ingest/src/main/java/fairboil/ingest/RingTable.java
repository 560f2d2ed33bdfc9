package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.SheetRows;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The rings of a study as intended. */
final class RingTable {

  private final String study;
  private final BuildTable builds;
  private final List<Ring> rings = new ArrayList<>();
  private final Map<String, List<Ring>> byName = new LinkedHashMap<>();
  private final Map<List<String>, Optional<Ring>> found = new HashMap<>();
  private final Set<List<String>> taken = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  private RingTable(String study, BuildTable builds) {
    this.study = study;
    this.builds = builds;
  }

  /**
   * The rings of a sheet. Where the number of holes could not be read there is a ring all the same:
   * its holes and prints have something to be told of.
   */
  static RingTable of(String study, Optional<SheetRows> sheet, BuildTable builds) {
    RingTable table = new RingTable(study, builds);
    sheet.stream()
        .flatMap(
            it ->
                Stream.concat(
                    it.rows().stream(), it.aside().stream().filter(RingTable::isNamedOnly)))
        .sorted(Comparator.comparing(Row::place))
        .forEach(table::add);
    return table;
  }

  private static boolean isNamedOnly(Row row) {
    return row.cell(RingsSheet.RING).isPresent() && row.unread(RingsSheet.HOLES).isPresent();
  }

  private void add(Row row) {
    Ring ring = new Ring(study, row);
    List<String> of =
        List.of(
            ring.name(),
            row.value(RingsSheet.DESIGN).orElse(""),
            row.value(RingsSheet.BUILD).orElse(""));
    if (ring.isLegible() && row.get(RingsSheet.HOLES) < 1) {
      error(
          row.place(RingsSheet.HOLES),
          "a ring needs at least one hole, so the row was set aside",
          "fill in how many holes it has");
    } else if (!taken.add(of)) {
      error(
          row.place(),
          "ring " + ring.name() + " was described before, so this row was set aside",
          "keep one of the rows, or say in each which design or build it is for");
    } else {
      if (ring.isLegible()) {
        checkDivisions(row);
      }
      checkOwner(row);
      rings.add(ring);
      byName.computeIfAbsent(ring.name(), name -> new ArrayList<>()).add(ring);
    }
  }

  private void error(Place place, String problem, String remedy) {
    findings.add(Finding.error(place, problem, remedy));
  }

  // Every division has a hole or is skipped.
  private void checkDivisions(Row row) {
    int holes = row.get(RingsSheet.HOLES);
    List<Integer> skipped = row.value(RingsSheet.SKIPPED).orElse(List.of());
    int divisions = row.value(RingsSheet.DIVISIONS).orElse(holes + skipped.size());
    long left =
        divisions - skipped.stream().filter(n -> n >= 1 && n <= divisions).distinct().count();
    if (left != holes) {
      error(
          row.place(RingsSheet.DIVISIONS),
          String.format(
              java.util.Locale.ROOT,
              "%d divisions without those skipped leave %d places for %d holes",
              divisions,
              left,
              holes),
          "make divisions, less the numbers in skipped, equal to holes");
    }
  }

  private void checkOwner(Row row) {
    row.cell(RingsSheet.BUILD)
        .filter(build -> !builds.has(build.value()))
        .ifPresent(build -> findings.add(unknown("build", build, builds.nearest(build.value()))));
    row.cell(RingsSheet.DESIGN)
        .filter(design -> !builds.hasDesign(design.value()))
        .ifPresent(
            design -> findings.add(unknown("design", design, nearestDesign(design.value()))));
  }

  private Optional<String> nearestDesign(String name) {
    Set<String> designs = new LinkedHashSet<>();
    builds.builds().forEach(build -> build.design().ifPresent(designs::add));
    return Nearest.to(name, designs);
  }

  private static Finding unknown(String what, Given<String> cell, Optional<String> likely) {
    return Finding.warning(
        cell.place(),
        "no " + what + " is called " + cell.value() + ", so this ring belongs to nothing",
        likely
            .map(name -> "did you mean " + name + "?")
            .orElse("check how it is spelt in builds.csv"));
  }

  boolean isEmpty() {
    return rings.isEmpty();
  }

  /** The ring of that name that a build has. */
  Optional<Ring> find(String ring, Build build) {
    return found.computeIfAbsent(
        List.of(ring, build.key().name()),
        key ->
            byName.getOrDefault(ring, List.of()).stream().filter(of -> of.isOf(build)).findFirst());
  }

  /** What to do about a ring that was not found: a clause. */
  String remedy(String name) {
    if (byName.containsKey(name)) {
      return "rings.csv has it for another design or build: add a row for this one";
    }
    return nearest(name)
        .map(likely -> "did you mean " + likely + "?")
        .orElse("add a row for it to rings.csv");
  }

  Optional<String> nearest(String name) {
    return Nearest.to(name, byName.keySet());
  }

  boolean has(String name) {
    return byName.containsKey(name);
  }

  List<Ring> rings() {
    return rings;
  }

  List<Finding> findings() {
    return findings;
  }
}
