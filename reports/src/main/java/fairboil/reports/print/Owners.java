package fairboil.reports.print;

import fairboil.analysis.layout.IntendedRing;
import fairboil.ingest.Study;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Which rows of {@code rings.csv} describe which builds. */
final class Owners {

  private final Study study;

  Owners(Study study) {
    this.study = study;
  }

  /**
   * Rows that go on one sheet of paper, and the builds that they are for.
   *
   * @param rings one ring in a wall, or all that lie in one base; unmodifiable
   * @param builds the builds; none if only a design has them so far; unmodifiable
   */
  record Group(List<Ring> rings, List<Build> builds) {

    /** Copies the lists. */
    Group {
      rings = List.copyOf(rings);
      builds = List.copyOf(builds);
    }

    /** For whom it is, in as few words as a title has room for. */
    String title() {
      return builds.size() > 1 && design().isPresent()
          ? "design " + design().get() + " (" + builds.size() + " builds)"
          : words();
    }

    private Optional<String> design() {
      return rings.stream()
          .flatMap(ring -> ring.row().value(RingsSheet.DESIGN).stream())
          .findFirst();
    }

    /** For whom it is, in words. */
    String words() {
      List<String> names = builds.stream().map(build -> build.key().name()).toList();
      Optional<String> meant =
          rings.stream().flatMap(ring -> ring.row().value(RingsSheet.BUILD).stream()).findFirst();
      return RingWords.owners(names.isEmpty() ? meant.stream().toList() : names, design());
    }
  }

  /** The rows of a build, in the order of the sheet: of those of one name the closest. */
  List<Ring> of(Build build) {
    return IntendedRing.rowsOf(build, study.rings());
  }

  /** Every ring in a wall with its builds, in the order of the sheet. */
  List<Group> walls() {
    Map<Ring, List<Build>> users = new LinkedHashMap<>();
    study.rings().stream()
        .filter(ring -> !IntendedRing.isOnBase(ring))
        .forEach(ring -> users.put(ring, new ArrayList<>()));
    for (Build build : study.builds()) {
      of(build).stream()
          .filter(users::containsKey)
          .forEach(ring -> Objects.requireNonNull(users.get(ring)).add(build));
    }
    List<Group> groups = new ArrayList<>();
    users.forEach((ring, builds) -> groups.add(new Group(List.of(ring), builds)));
    return groups;
  }

  /**
   * Every pattern in a base with its builds; then rows that no build has yet, by whom they name.
   */
  List<Group> bases() {
    Map<List<Ring>, List<Build>> users = new LinkedHashMap<>();
    for (Build build : study.builds()) {
      List<Ring> pattern = of(build).stream().filter(IntendedRing::isOnBase).toList();
      if (!pattern.isEmpty()) {
        users.computeIfAbsent(pattern, key -> new ArrayList<>()).add(build);
      }
    }
    List<Group> groups = new ArrayList<>();
    users.forEach((rings, builds) -> groups.add(new Group(rings, builds)));
    groups.addAll(unused(users.keySet().stream().flatMap(List::stream).toList()));
    return groups;
  }

  private List<Group> unused(List<Ring> used) {
    Map<List<String>, List<Ring>> byOwner = new LinkedHashMap<>();
    study.rings().stream()
        .filter(IntendedRing::isOnBase)
        .filter(ring -> !used.contains(ring))
        .forEach(ring -> byOwner.computeIfAbsent(owner(ring), key -> new ArrayList<>()).add(ring));
    return byOwner.values().stream().map(rings -> new Group(rings, List.of())).toList();
  }

  private static List<String> owner(Ring ring) {
    return List.of(
        ring.study(),
        ring.row().value(RingsSheet.DESIGN).orElse(""),
        ring.row().value(RingsSheet.BUILD).orElse(""));
  }
}
