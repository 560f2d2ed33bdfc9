package fairboil.reports.print;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Where the holes of a base lie, as seen from outside. Millimetres from the centre, x to the right,
 * y upwards; angles against the clock from x.
 *
 * @param circles its circles, in the order of the sheet; unmodifiable
 * @param rim radius of the can from its wrap, where one was told
 */
record Disc(List<Circle> circles, OptionalDouble rim) {

  /** Paper beyond the outermost hole where no rim is known. */
  private static final double EDGE = 14;

  /** Copies the circles. */
  Disc {
    circles = List.copyOf(circles);
  }

  /**
   * One circle of holes.
   *
   * @param plan its row
   * @param radius 0 for a centre hole
   * @param before how many holes of the same ring come before it
   * @param letter what tells it from the other circles; empty if it is alone
   */
  record Circle(RingPlan plan, double radius, int before, String letter) {

    List<Spot> spots() {
      return IntStream.rangeClosed(1, plan.divisions()).mapToObj(this::spot).toList();
    }

    private Spot spot(int division) {
      OptionalInt here = plan.holeOn(division);
      OptionalInt hole =
          here.isPresent() ? OptionalInt.of(before + here.getAsInt()) : OptionalInt.empty();
      return new Spot(division, hole, radius, plan.angle(division));
    }

    /** Straight distance between neighbouring divisions: the chord 2 R sin(π / n). */
    double chord() {
      return 2 * radius * Math.sin(Math.PI / plan.divisions());
    }

    double reach() {
      return radius + plan.diameter().orElse(0) / 2;
    }
  }

  /** A division on a base. */
  record Spot(int division, OptionalInt hole, double radius, double angle) {

    double x() {
      return radius * Math.cos(angle);
    }

    double y() {
      return radius * Math.sin(angle);
    }
  }

  /** The disc of some rings on one base, or why there is none. */
  static Optional<Disc> of(List<RingPlan> plans, List<Finding> findings) {
    List<Circle> circles = new ArrayList<>();
    Map<String, Integer> before = new HashMap<>();
    for (RingPlan plan : plans) {
      int first = before.getOrDefault(plan.name(), 0);
      before.put(plan.name(), first + plan.holes());
      OptionalDouble radius = plan.circle();
      if (radius.isEmpty() || radius.getAsDouble() < 0 || radius.getAsDouble() > 1000) {
        findings.add(noCircle(plan));
        continue;
      }
      String letter = plans.size() == 1 ? "" : letter(circles.size());
      circles.add(new Circle(plan, radius.getAsDouble(), first, letter));
    }
    OptionalDouble rim = rim(plans);
    circles.stream()
        .filter(circle -> rim.isPresent() && circle.reach() > rim.getAsDouble())
        .forEach(circle -> findings.add(beyondRim(circle)));
    return circles.isEmpty() ? Optional.empty() : Optional.of(new Disc(circles, rim));
  }

  private static String letter(int index) {
    return index < 26 ? String.valueOf((char) ('a' + index)) : "z" + index;
  }

  private static OptionalDouble rim(List<RingPlan> plans) {
    return plans.stream()
        .flatMapToDouble(plan -> plan.wrap().stream())
        .filter(wrap -> wrap > 0 && wrap <= StripLayout.LONGEST)
        .map(wrap -> wrap / (2 * Math.PI))
        .findFirst();
  }

  private static Finding noCircle(RingPlan plan) {
    return Finding.error(
        plan.ring().row().place(RingsSheet.CIRCLE),
        PrintSays.NO_CIRCLE.with(Argument.name(plan.name())),
        PrintSays.TYPE_RADIUS.with(Argument.typed(25e-3, 1e-3, Dimension.LENGTH)));
  }

  private static Finding beyondRim(Circle circle) {
    return Finding.warning(
        circle.plan().ring().row().place(RingsSheet.CIRCLE),
        PrintSays.BEYOND_RIM.with(Argument.name(circle.plan().name())),
        PrintSays.CORRECT_CIRCLE.with());
  }

  /** Radius of the paper. */
  double radius() {
    double reach = circles.stream().mapToDouble(Circle::reach).max().orElseThrow();
    return rim.isPresent() ? Math.max(rim.getAsDouble(), reach) : reach + EDGE;
  }
}
