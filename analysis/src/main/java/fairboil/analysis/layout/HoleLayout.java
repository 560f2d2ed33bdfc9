package fairboil.analysis.layout;

import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Settings;
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

  private HoleLayout(Study study) {
    this.study = study;
  }

  /** The rings of all builds of a study. */
  public static LayoutResult of(Study study) {
    HoleLayout layout = new HoleLayout(study);
    List<RingResult> rings =
        study.builds().stream().flatMap(build -> layout.rings(build).stream()).toList();
    layout.findings.addAll(HoleCells.oddBars(study.holes()));
    return new LayoutResult(rings, layout.findings);
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
    double sigma = study.settingsOf(build.key()).get(Settings.HOLE_READING_UNCERTAINTY).value();
    walls.forEach(
        (name, plans) ->
            WallRing.of(
                    build.key(),
                    plans.get(0),
                    Objects.requireNonNull(holes.get(name)),
                    sigma,
                    findings)
                .ifPresent(results::add));
    Map<String, List<Hole>> onBase = new LinkedHashMap<>();
    bases.keySet().forEach(name -> onBase.put(name, holes.get(name)));
    results.addAll(new Base(build.key(), sigma, findings).rings(bases, onBase));
    results.forEach(
        result -> reportMissing(result, Objects.requireNonNull(holes.get(result.ring())).get(0)));
    return results;
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
              "build " + build.key() + " has no ring " + name + " in rings.csv",
              "give the ring a row there, or correct its name; its holes are left out"));
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

  private boolean fits(IntendedRing first, IntendedRing next) {
    if (first.isOnBase() && next.isOnBase()) {
      return true;
    }
    findings.add(
        Finding.error(
            next.ring().row().place(RingsSheet.RING),
            "ring " + next.name() + " stands in " + first.ring().row().place() + " already",
            "give each ring its own name, or say in build or design whose it is; this row is left"
                + " out"));
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
              Words.holes(List.copyOf(missing))
                  + " of ring "
                  + result.ring()
                  + " of build "
                  + result.build()
                  + (missing.size() == 1 ? " is" : " are")
                  + " not among those measured",
              "measure "
                  + (missing.size() == 1 ? "it" : "them")
                  + " too; until then the ring is judged by the others"));
    }
  }
}
