package fairboil.analysis.layout;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The holes in the base of one build: circles fitted together, then each ring by itself. */
final class Base {

  private static final Template SINGLE_HOLE =
      Template.of(
          "only one hole in the base of build {name} could be used, so no error of its place shows");
  private static final Template MEASURE_OTHERS =
      Template.of("measure the other holes of the base too");
  private static final Template NO_CIRCLE =
      Template.of(
          "the circle of ring {name} on the base has no radius, or one below 0, so its hole"
              + " positions are not judged");
  private static final Template TYPE_RADIUS =
      Template.of("type the radius in the column circle, or 0 for a hole in the centre");
  private static final Template NO_PLACE =
      Template.of("hole {number} of ring {name} has no place on the base, so it is left out");
  private static final Template TYPE_PLACE =
      Template.of("type its place in the columns x and y, or angle and radius");

  private final Key build;
  private final ReadingUncertainty reading;
  private final List<Finding> findings;

  Base(Key build, ReadingUncertainty reading, List<Finding> findings) {
    this.build = build;
    this.reading = reading;
    this.findings = findings;
  }

  /**
   * Works out the rings of a base.
   *
   * @param plans for each ring its circles, in the order of the sheet
   * @param holes for each ring its holes
   */
  List<RingResult> rings(Map<String, List<IntendedRing>> plans, Map<String, List<Hole>> holes) {
    List<BaseCircle> circles = circles(plans);
    List<Spot> spots = spots(circles, holes);
    if (spots.isEmpty()) {
      return List.of();
    }
    Optional<BasePattern> pattern = BasePattern.fit(circles, spots);
    if (pattern.isEmpty()) {
      findings.add(
          Finding.note(
              spots.get(0).place(),
              SINGLE_HOLE.with(Argument.name(build.name())),
              MEASURE_OTHERS.with()));
      return List.of();
    }
    return results(circles, pattern.get());
  }

  private List<BaseCircle> circles(Map<String, List<IntendedRing>> plans) {
    List<BaseCircle> circles = new ArrayList<>();
    int global = 0;
    for (List<IntendedRing> ring : plans.values()) {
      int local = 0;
      for (IntendedRing plan : ring) {
        if (plan.circle().isEmpty() || plan.circle().getAsDouble() < 0) {
          findings.add(
              Finding.error(
                  plan.ring().row().place(RingsSheet.CIRCLE),
                  NO_CIRCLE.with(Argument.name(plan.name())),
                  TYPE_RADIUS.with()));
        } else {
          circles.add(new BaseCircle(plan, plan.circle().getAsDouble(), local, global));
        }
        local += plan.holes();
        global += plan.holes();
      }
    }
    return circles;
  }

  /** The holes of all circles, numbered through the whole base, readings averaged. */
  private List<Spot> spots(List<BaseCircle> circles, Map<String, List<Hole>> holes) {
    Map<Integer, List<Spot>> byReading = new LinkedHashMap<>();
    for (Map.Entry<String, List<Hole>> ring : holes.entrySet()) {
      List<BaseCircle> own =
          circles.stream().filter(circle -> circle.plan().name().equals(ring.getKey())).toList();
      if (own.isEmpty()) {
        continue;
      }
      int first = own.get(0).global() - own.get(0).local();
      int planned = own.stream().mapToInt(c -> c.local() + c.plan().holes()).max().orElseThrow();
      int number = 0;
      for (List<Hole> reading : Readings.sorted(ring.getValue(), planned, findings)) {
        List<Spot> spots = byReading.computeIfAbsent(number++, key -> new ArrayList<>());
        for (Hole hole : reading) {
          spot(hole, first).ifPresent(spots::add);
        }
      }
    }
    return averaged(List.copyOf(byReading.values()));
  }

  private Optional<Spot> spot(Hole hole, int first) {
    OptionalDouble radius = HoleCells.find(hole, HolesSheet.RADIUS);
    OptionalDouble angle = HoleCells.find(hole, HolesSheet.ANGLE);
    OptionalDouble x = HoleCells.find(hole, HolesSheet.X);
    OptionalDouble y = HoleCells.find(hole, HolesSheet.Y);
    if (x.isEmpty() || y.isEmpty()) {
      boolean polar = radius.isPresent() && (angle.isPresent() || radius.getAsDouble() == 0);
      if (!polar) {
        findings.add(noPlace(hole));
        return Optional.empty();
      }
      x = OptionalDouble.of(radius.getAsDouble() * Math.cos(angle.orElse(0)));
      y = OptionalDouble.of(radius.getAsDouble() * Math.sin(angle.orElse(0)));
    }
    return Optional.of(
        new Spot(
            first + hole.number(),
            x.getAsDouble(),
            y.getAsDouble(),
            HoleCells.find(hole, HolesSheet.DIAMETER),
            1,
            hole.row().place()));
  }

  private static Finding noPlace(Hole hole) {
    return Finding.error(
        hole.row().place(HolesSheet.X),
        NO_PLACE.with(Argument.number(hole.number(), 0), Argument.name(hole.ring())),
        TYPE_PLACE.with());
  }

  /** Lays later readings onto the first, since the base may have lain otherwise, and averages. */
  private List<Spot> averaged(List<List<Spot>> readings) {
    List<List<Spot>> laid = new ArrayList<>();
    for (List<Spot> reading : readings) {
      laid.add(laid.isEmpty() ? reading : laidOnto(laid.get(0), reading));
    }
    if (laid.size() > 1) {
      Readings.check(Readings.common(laid.get(0), laid.get(1)), 3, reading, findings);
    }
    return Readings.averaged(laid);
  }

  private static List<Spot> laidOnto(List<Spot> first, List<Spot> second) {
    List<Rigid.Pair> pairs =
        Readings.common(first, second).stream()
            .map(pair -> new Rigid.Pair(pair[0].a(), pair[0].b(), pair[1].a(), pair[1].b()))
            .toList();
    if (pairs.size() < 2) {
      return second;
    }
    Rigid motion = Rigid.fit(pairs);
    return second.stream()
        .map(
            spot -> {
              double[] back = motion.error(new Rigid.Pair(0, 0, spot.a(), spot.b()));
              return spot.at(back[0], back[1]);
            })
        .toList();
  }

  private List<RingResult> results(List<BaseCircle> circles, BasePattern pattern) {
    Map<String, List<Integer>> rings = new LinkedHashMap<>();
    for (int i = 0; i < circles.size(); i++) {
      if (!pattern.pairs().get(i).isEmpty()) {
        rings.computeIfAbsent(circles.get(i).plan().name(), key -> new ArrayList<>()).add(i);
      }
    }
    return rings.values().stream().map(own -> result(circles, pattern, own)).toList();
  }

  private RingResult result(List<BaseCircle> circles, BasePattern pattern, List<Integer> own) {
    List<IntendedRing> plans = own.stream().map(i -> circles.get(i).plan()).toList();
    List<List<Placed>> placed =
        own.stream()
            .map(
                i ->
                    pattern.pairs().get(i).stream()
                        .map(placing -> placed(circles.get(i), pattern, placing))
                        .toList())
            .toList();
    double extent = own.stream().mapToDouble(i -> circles.get(i).radius()).max().orElseThrow();
    double sigma = reading.sigma();
    RingFigures figures = new RingFigures(plans, placed, sigma);
    Lever lever = Lever.of(pattern);
    return figures.result(
        build,
        new RingFigures.FitTaken(
            extent,
            pattern.motion().rotation(),
            sigma / Math.sqrt(lever.squares()),
            2,
            lever.fitted(own.stream().flatMap(i -> pattern.pairs().get(i).stream()).toList()),
            RingFigures.Offset.KNOWN));
  }

  /** How the three numbers fitted are shared out: the shift by count, the turn by lever arm. */
  private record Lever(int count, double middleX, double middleY, double squares) {

    static Lever of(BasePattern pattern) {
      List<Rigid.Pair> all = pattern.allPairs();
      double x = all.stream().mapToDouble(Rigid.Pair::planX).average().orElseThrow();
      double y = all.stream().mapToDouble(Rigid.Pair::planY).average().orElseThrow();
      double squares = 0;
      for (Rigid.Pair pair : all) {
        squares += Math.pow(pair.planX() - x, 2) + Math.pow(pair.planY() - y, 2);
      }
      return new Lever(all.size(), x, y, squares);
    }

    double fitted(List<BasePattern.Placing> ring) {
      double own = 0;
      for (BasePattern.Placing placing : ring) {
        own +=
            Math.pow(placing.pair().planX() - middleX, 2)
                + Math.pow(placing.pair().planY() - middleY, 2);
      }
      return 2.0 * ring.size() / count + (squares > 0 ? own / squares : 0);
    }
  }

  private static Placed placed(
      BaseCircle circle, BasePattern pattern, BasePattern.Placing placing) {
    double[] error = pattern.motion().error(placing.pair());
    double x = placing.pair().planX();
    double y = placing.pair().planY();
    double tangential = error[0];
    double radial = error[1];
    if (circle.radius() > 0) {
      radial = (error[0] * x + error[1] * y) / circle.radius();
      tangential = (error[1] * x - error[0] * y) / circle.radius();
    }
    int number = circle.local() + circle.numberHere(placing.spot());
    return new Placed(
        placing.spot(), placing.slot(), new HoleError(number, x, y, tangential, radial));
  }
}
