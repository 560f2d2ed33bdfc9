package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.BuildsSheet;
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
      error(row.place(RingsSheet.HOLES), RingSays.NO_HOLES, RingSays.FILL_HOLES);
    } else if (!taken.add(of)) {
      error(
          row.place(),
          RingSays.DESCRIBED_BEFORE.with(Argument.name(ring.name())),
          RingSays.KEEP_ONE_RING);
    } else {
      if (ring.isLegible()) {
        checkDivisions(row);
      }
      checkOwner(row);
      rings.add(ring);
      byName.computeIfAbsent(ring.name(), name -> new ArrayList<>()).add(ring);
    }
  }

  private void error(Place place, Message problem, Message remedy) {
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
          RingSays.PLACES_DIFFER.with(
              Argument.count(divisions), Argument.count(left), Argument.count(holes)),
          RingSays.EQUAL_HOLES);
    }
  }

  private void checkOwner(Row row) {
    row.cell(RingsSheet.BUILD)
        .filter(build -> !builds.has(build.value()))
        .ifPresent(
            build ->
                findings.add(unknown(RingSays.NO_BUILD, build, builds.nearest(build.value()))));
    row.cell(RingsSheet.DESIGN)
        .filter(design -> !builds.hasDesign(design.value()))
        .ifPresent(
            design ->
                findings.add(unknown(RingSays.NO_DESIGN, design, nearestDesign(design.value()))));
  }

  private Optional<String> nearestDesign(String name) {
    Set<String> designs = new LinkedHashSet<>();
    builds.builds().forEach(build -> build.design().ifPresent(designs::add));
    return Nearest.to(name, designs);
  }

  private static Finding unknown(Template problem, Given<String> cell, Optional<String> likely) {
    return Finding.warning(
        cell.place(),
        problem.with(Argument.name(cell.value())),
        likely
            .map(Nearest::didYouMean)
            .orElseGet(
                () -> RingSays.CHECK_SPELLING.with(Argument.sheet(BuildsSheet.SCHEMA.file()))));
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

  /** What to do about a ring that was not found. */
  Message remedy(String name) {
    Argument sheet = Argument.sheet(RingsSheet.SCHEMA.file());
    if (byName.containsKey(name)) {
      return RingSays.OF_OTHERS.with(sheet);
    }
    return nearest(name).map(Nearest::didYouMean).orElse(RingSays.ADD_RING.with(sheet));
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
