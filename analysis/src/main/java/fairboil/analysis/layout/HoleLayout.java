package fairboil.analysis.layout;

import fairboil.analysis.fault.Faults;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Works out how well the holes of each build were placed. */
public final class HoleLayout {

  private final Study study;
  private final List<Finding> findings = new ArrayList<>();
  private final Faults faults = new Faults();

  private HoleLayout(Study study) {
    this.study = study;
  }

  /** The rings of all builds of a study. */
  public static LayoutResult of(Study study) {
    HoleLayout layout = new HoleLayout(study);
    List<RingResult> rings =
        study.builds().stream().flatMap(build -> layout.contained(build).stream()).toList();
    layout.findings.addAll(HoleCells.oddBars(study.holes()));
    return new LayoutResult(rings, layout.findings, layout.faults.all());
  }

  private List<RingResult> contained(Build build) {
    Place place = Place.of(HolesSheet.SCHEMA.file());
    return faults
        .contain(
            LayoutSays.HOLES.with(Argument.name(build.key().name())), place, () -> rings(build))
        .orElse(List.of());
  }

  private List<RingResult> rings(Build build) {
    Map<String, List<Hole>> holes = new LinkedHashMap<>();
    for (Hole hole : study.holes()) {
      if (hole.build().equals(build.key())) {
        holes.computeIfAbsent(hole.ring(), key -> new ArrayList<>()).add(hole);
      }
    }
    Map<String, List<IntendedRing>> walls = new LinkedHashMap<>();
    Map<String, List<IntendedRing>> bases = new LinkedHashMap<>();
    for (String name : inSheetOrder(holes)) {
      List<IntendedRing> plans = plans(build, name, Objects.requireNonNull(holes.get(name)));
      if (!plans.isEmpty()) {
        (plans.get(0).isOnBase() ? bases : walls).put(name, plans);
      }
    }
    return results(build, holes, walls, bases);
  }

  /** The names of rings, in the order of {@code rings.csv}. */
  private List<String> inSheetOrder(Map<String, List<Hole>> holes) {
    List<String> known = study.rings().stream().map(Ring::name).distinct().toList();
    return holes.keySet().stream()
        .sorted(Comparator.comparing(name -> known.contains(name) ? known.indexOf(name) : -1))
        .toList();
  }

  private List<RingResult> results(
      Build build,
      Map<String, List<Hole>> holes,
      Map<String, List<IntendedRing>> walls,
      Map<String, List<IntendedRing>> bases) {
    List<RingResult> results = new ArrayList<>();
    ReadingUncertainty reading = new ReadingUncertainty(study.settingsOf(build.key()));
    walls.forEach(
        (name, plans) ->
            wall(build, plans.get(0), Objects.requireNonNull(holes.get(name)), reading)
                .ifPresent(results::add));
    Map<String, List<Hole>> onBase = new LinkedHashMap<>();
    bases.keySet().forEach(name -> onBase.put(name, holes.get(name)));
    results.addAll(base(build, bases, onBase, reading));
    results.forEach(
        result -> reportMissing(result, Objects.requireNonNull(holes.get(result.ring())).get(0)));
    return results;
  }

  private Optional<RingResult> wall(
      Build build, IntendedRing plan, List<Hole> holes, ReadingUncertainty reading) {
    return faults
        .contain(
            LayoutSays.RING.with(Argument.name(plan.name()), Argument.name(build.key().name())),
            holes.get(0).row().place(),
            () -> WallRing.of(build.key(), plan, holes, reading, findings))
        .flatMap(ring -> ring);
  }

  private List<RingResult> base(
      Build build,
      Map<String, List<IntendedRing>> plans,
      Map<String, List<Hole>> holes,
      ReadingUncertainty reading) {
    return faults
        .contain(
            LayoutSays.BASE.with(Argument.name(build.key().name())),
            Place.of(HolesSheet.SCHEMA.file()),
            () -> new Base(build.key(), reading, findings).rings(plans, holes))
        .orElse(List.of());
  }

  /** The plan of a ring; on a base, rows of one name are circles of one ring. */
  private List<IntendedRing> plans(Build build, String name, List<Hole> holes) {
    List<Ring> rows =
        IntendedRing.rowsOf(build, study.rings()).stream()
            .filter(ring -> ring.name().equals(name))
            .toList();
    if (study.rings().isEmpty()) {
      return List.of(); // said once, where holes.csv is read
    }
    if (rows.isEmpty()) {
      findings.add(
          Finding.error(
              holes.get(0).row().place(),
              LayoutSays.NO_RING.with(
                  Argument.name(build.key().name()),
                  Argument.name(name),
                  Argument.sheet(RingsSheet.SCHEMA.file())),
              LayoutSays.ADD_RING.with()));
      return List.of();
    }
    List<Finding> unread = rows.stream().filter(row -> !row.isLegible()).map(this::unread).toList();
    if (!unread.isEmpty()) {
      findings.addAll(unread);
      return List.of();
    }
    List<IntendedRing> plans = new ArrayList<>();
    for (Ring row : rows) {
      Optional<IntendedRing> plan = IntendedRing.of(row);
      if (plan.isEmpty()) {
        return List.of();
      }
      plan.filter(next -> plans.isEmpty() || fits(plans.get(0), next)).ifPresent(plans::add);
    }
    return plans;
  }

  private Finding unread(Ring ring) {
    return Finding.error(
        ring.row().illegible().get(0).finding().place(),
        LayoutSays.NOT_JUDGED.with(Argument.name(ring.name())),
        LayoutSays.CORRECT_CELL.with());
  }

  private boolean fits(IntendedRing first, IntendedRing next) {
    if (first.isOnBase() && next.isOnBase()) {
      return true;
    }
    findings.add(
        Finding.error(
            next.ring().row().place(RingsSheet.RING),
            LayoutSays.RING_TWICE.with(
                Argument.name(next.name()), Argument.place(first.ring().row().place())),
            LayoutSays.OWN_NAME.with()));
    return false;
  }

  private void reportMissing(RingResult result, Hole first) {
    TreeSet<Integer> missing =
        new TreeSet<>(IntStream.rangeClosed(1, result.holesIntended()).boxed().toList());
    result.holes().forEach(hole -> missing.remove(hole.number()));
    if (!missing.isEmpty()) {
      findings.add(
          Finding.warning(
              first.row().place(),
              missing(result, List.copyOf(missing)),
              missing.size() == 1 ? LayoutSays.ADD_HOLE.with() : LayoutSays.ADD_HOLES.with()));
    }
  }

  private static Message missing(RingResult result, List<Integer> missing) {
    List<Argument> numbers = missing.stream().map(number -> Argument.number(number, 0)).toList();
    Argument ring = Argument.name(result.ring());
    Argument build = Argument.name(result.build().name());
    return numbers.size() == 1
        ? LayoutSays.HOLE_MISSING.with(numbers.get(0), ring, build)
        : LayoutSays.HOLES_MISSING.with(Argument.list(numbers), ring, build);
  }
}
