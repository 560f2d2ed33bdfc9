package fairboil.ingest;

import fairboil.ingest.choice.YesNo;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The builds of several studies. Builds that two or more studies mark as shared under one name are
 * one stove that was sent round; all others are stoves of their own, even if their names are alike.
 */
final class PooledBuilds {

  private static final Argument BUILDS = Argument.sheet(BuildsSheet.SCHEMA.file());

  private final Map<String, Study> studies;
  private final Map<String, List<String>> foldersOfShared = new TreeMap<>();
  private final Map<Key, Key> keys = new LinkedHashMap<>();
  private final Map<Key, Build> builds = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private PooledBuilds(Map<String, Study> studies) {
    this.studies = studies;
  }

  /**
   * Joins builds.
   *
   * @param studies by folder, all places told from outside it
   */
  static PooledBuilds of(Map<String, Study> studies) {
    PooledBuilds pooled = new PooledBuilds(studies);
    pooled.findShared();
    pooled.name();
    pooled.join();
    return pooled;
  }

  private void findShared() {
    studies.forEach(
        (folder, study) ->
            study.builds().stream()
                .filter(PooledBuilds::isMarked)
                .forEach(
                    build ->
                        foldersOfShared
                            .computeIfAbsent(build.key().name(), name -> new ArrayList<>())
                            .add(folder)));
    Map<String, List<String>> marked = new TreeMap<>(foldersOfShared);
    foldersOfShared.values().removeIf(folders -> folders.size() < 2);
    marked.forEach(this::tellUnmarked);
  }

  private static boolean isMarked(Build build) {
    return build.row().value(BuildsSheet.SHARED).filter(YesNo.YES::equals).isPresent();
  }

  private Optional<Build> find(String folder, String name) {
    return Objects.requireNonNull(studies.get(folder)).build(new Key(folder, name));
  }

  private void tellUnmarked(String name, List<String> marked) {
    for (String folder : studies.keySet()) {
      Optional<Build> other = find(folder, name).filter(build -> !isMarked(build));
      other.ifPresent(
          build ->
              findings.add(
                  Finding.warning(
                      build.row().place(BuildsSheet.SHARED),
                      PoolSays.SHARED_ELSEWHERE.with(Argument.name(name), Argument.names(marked)),
                      PoolSays.MARK_IT)));
    }
  }

  private boolean isShared(Key key) {
    return foldersOfShared.getOrDefault(key.name(), List.of()).contains(key.study());
  }

  /** Gives each stove its key: own stoves carry their folder if any two of them are named alike. */
  private void name() {
    List<List<String>> names = new ArrayList<>();
    names.add(List.copyOf(foldersOfShared.keySet()));
    for (Study study : studies.values()) {
      names.add(own(study).map(Key::name).toList());
    }
    Set<String> repeated = PoolNames.repeated(names);
    repeated.stream().sorted().forEach(this::tellAlike);
    for (Study study : studies.values()) {
      for (Build build : study.builds()) {
        Key key = build.key();
        String name = repeated.isEmpty() ? key.name() : key.study() + " " + key.name();
        keys.put(key, isShared(key) ? home(key.name()) : new Key(key.study(), name));
      }
    }
  }

  private java.util.stream.Stream<Key> own(Study study) {
    return study.builds().stream().map(Build::key).filter(key -> !isShared(key));
  }

  private void tellAlike(String name) {
    List<String> folders =
        studies.keySet().stream().filter(folder -> find(folder, name).isPresent()).toList();
    boolean unmarked =
        folders.stream()
            .noneMatch(folder -> find(folder, name).filter(PooledBuilds::isMarked).isPresent());
    if (unmarked) {
      findings.add(
          Finding.note(
              find(folders.get(0), name).orElseThrow().row().place(BuildsSheet.BUILD),
              PoolSays.NAMED_ALIKE.with(Argument.name(name), Argument.names(folders)),
              PoolSays.MARK_EACH.with(BUILDS)));
    }
  }

  /** The folder whose rings and holes of a shared stove are used: the first that measured it. */
  private Key home(String name) {
    List<String> folders = Objects.requireNonNull(foldersOfShared.get(name));
    String home =
        folders.stream()
            .filter(folder -> hasHoles(new Key(folder, name)))
            .findFirst()
            .orElse(folders.get(0));
    return new Key(home, name);
  }

  private boolean hasHoles(Key build) {
    return Objects.requireNonNull(studies.get(build.study())).holes().stream()
        .anyMatch(hole -> hole.build().equals(build));
  }

  private void join() {
    for (Study study : studies.values()) {
      for (Build build : study.builds()) {
        Key key = key(build.key());
        Row.Builder row = build.row().copy();
        if (isShared(build.key())) {
          Objects.requireNonNull(foldersOfShared.get(key.name()))
              .forEach(folder -> fillIn(row, folder, build));
        }
        builds.putIfAbsent(key, new Build(key, row.build()));
      }
    }
  }

  /** What another folder tells of a shared stove. */
  private void fillIn(Row.Builder row, String folder, Build build) {
    Row other = find(folder, build.key().name()).orElseThrow().row();
    Optional<Given<String>> mine = build.row().cell(BuildsSheet.DESIGN);
    Optional<Given<String>> theirs = other.cell(BuildsSheet.DESIGN);
    if (mine.isEmpty()) {
      theirs.ifPresent(design -> row.put(BuildsSheet.DESIGN, design));
    } else if (theirs.filter(design -> !design.value().equals(mine.get().value())).isPresent()
        && isFirst(build.key())) {
      findings.add(
          Finding.warning(
              theirs.get().place(),
              PoolSays.OTHER_DESIGN.with(
                  Argument.name(build.key().name()),
                  Argument.cell(theirs.get().value()),
                  Argument.cell(mine.get().value()),
                  Argument.name(mine.get().place().file())),
              PoolSays.SAME_DESIGN.with(BUILDS)));
    }
  }

  private boolean isFirst(Key shared) {
    return Objects.requireNonNull(foldersOfShared.get(shared.name())).get(0).equals(shared.study());
  }

  /** The key of a build in the pool. */
  Key key(Key inFolder) {
    return keys.getOrDefault(inFolder, inFolder);
  }

  List<Build> builds() {
    return List.copyOf(builds.values());
  }

  /** The rings of all studies; those of a shared stove are its home's. */
  List<Ring> rings() {
    List<Ring> rings = new ArrayList<>();
    for (Study study : studies.values()) {
      for (Ring ring : study.rings()) {
        rings.add(new Ring(ring.study(), withBuild(ring)));
        compare(study, ring);
      }
    }
    return rings;
  }

  private Row withBuild(Ring ring) {
    Optional<Given<String>> cell = ring.row().cell(RingsSheet.BUILD);
    return cell.map(
            build ->
                ring.row()
                    .copy()
                    .put(
                        RingsSheet.BUILD,
                        build.map(name -> key(new Key(ring.study(), name)).name()))
                    .build())
        .orElse(ring.row());
  }

  /** Whether a ring of a shared stove is described as in its home. */
  private void compare(Study study, Ring ring) {
    for (Build build : study.builds()) {
      Key home = key(build.key());
      if (isShared(build.key()) && !home.equals(build.key()) && ring.isOf(build)) {
        Build there = find(home.study(), home.name()).orElseThrow();
        List<Ring> alike =
            Objects.requireNonNull(studies.get(home.study())).rings().stream()
                .filter(other -> other.name().equals(ring.name()) && other.isOf(there))
                .toList();
        boolean same =
            alike.stream()
                .anyMatch(
                    other ->
                        SameCells.difference(other.row(), ring.row(), RingsSheet.SCHEMA.columns())
                            .isEmpty());
        if (!same) {
          findings.add(ringDiffers(ring, home));
        }
      }
    }
  }

  private static Finding ringDiffers(Ring ring, Key home) {
    return Finding.warning(
        ring.row().place(),
        PoolSays.OTHER_RING.with(
            Argument.name(ring.name()), Argument.name(home.name()), Argument.name(home.study())),
        PoolSays.SAME_ROWS.with(Argument.sheet(RingsSheet.SCHEMA.file())));
  }

  /** The holes of all builds; of a shared stove, as its home measured them. */
  List<Hole> holes() {
    List<Hole> holes = new ArrayList<>();
    Map<Key, Place> aside = new LinkedHashMap<>();
    for (Study study : studies.values()) {
      for (Hole hole : study.holes()) {
        Key key = key(hole.build());
        if (isShared(hole.build()) && !key.equals(hole.build())) {
          aside.putIfAbsent(hole.build(), hole.row().place());
        } else {
          holes.add(new Hole(key, hole.ring(), hole.number(), hole.row()));
        }
      }
    }
    aside.forEach((build, place) -> findings.add(measuredAgain(build, place)));
    return holes;
  }

  private Finding measuredAgain(Key build, Place place) {
    return Finding.note(
        place,
        PoolSays.MEASURED_AGAIN.with(
            Argument.name(build.name()), Argument.name(key(build).study())),
        Message.NONE);
  }

  List<Finding> findings() {
    return findings;
  }
}
