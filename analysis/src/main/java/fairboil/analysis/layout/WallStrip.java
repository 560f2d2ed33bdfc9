package fairboil.analysis.layout;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The holes of a wall ring as measured along one strip laid round the can.
 *
 * @param wrap the length of the strip that goes round once, m
 * @param spots the holes, by number
 */
record WallStrip(double wrap, List<Spot> spots) {

  /** How far beyond the ends of the wrap a hole may stand, as a part of the wrap. */
  private static final double OVERLAP = 0.05;

  /** A misclosure that is shown at all, m. */
  private static final double SHOWN = 0.05e-3;

  /** Reads the holes of a ring, or says why their places on the wrap are not known. */
  static Optional<WallStrip> of(
      IntendedRing plan, List<Hole> holes, ReadingUncertainty reading, List<Finding> findings) {
    List<List<Hole>> readings = List.copyOf(Readings.sorted(holes, plan.holes(), findings));
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble wrap = wrap(plan, readings.get(0));
    if (wrap.isEmpty() || !(wrap.getAsDouble() > 0)) {
      findings.add(noWrap(plan));
      return Optional.empty();
    }
    return Optional.of(read(plan, readings, wrap.getAsDouble(), reading, findings));
  }

  private static WallStrip read(
      IntendedRing plan,
      List<List<Hole>> readings,
      double wrap,
      ReadingUncertainty uncertainty,
      List<Finding> findings) {
    List<List<Spot>> strips = new ArrayList<>();
    for (List<Hole> reading : readings) {
      List<Spot> strip = strip(plan, reading, wrap, uncertainty.sigma(), findings);
      if (!strip.isEmpty()) {
        strips.add(strips.isEmpty() ? strip : laidOnto(strips.get(0), strip, wrap));
      }
    }
    if (strips.size() > 1) {
      Readings.check(Readings.common(strips.get(0), strips.get(1)), 1, uncertainty, findings);
    }
    return new WallStrip(wrap, Readings.averaged(strips));
  }

  private static Finding noWrap(IntendedRing plan) {
    return Finding.error(
        plan.ring().row().place(RingsSheet.WRAP),
        WallSays.NO_WRAP.with(Argument.name(plan.name())),
        WallSays.MEASURE_WRAP.with(Argument.typed(0.314, 1e-3, Dimension.LENGTH)));
  }

  /** The wrap of the plan, else the sum of the gaps if they go all round. */
  private static OptionalDouble wrap(IntendedRing plan, List<Hole> reading) {
    return plan.wrap().isPresent() || !isClosed(plan, reading)
        ? plan.wrap()
        : OptionalDouble.of(
            reading.stream().mapToDouble(hole -> HoleCells.get(hole, HolesSheet.GAP)).sum());
  }

  /** Whether gaps go all round: every hole of the plan has one. */
  private static boolean isClosed(IntendedRing plan, List<Hole> reading) {
    return reading.size() > 1
        && reading.size() == plan.holes()
        && reading.stream().allMatch(hole -> HoleCells.has(hole, HolesSheet.GAP));
  }

  private static List<Spot> strip(
      IntendedRing plan, List<Hole> reading, double wrap, double sigma, List<Finding> findings) {
    boolean byGaps = reading.stream().noneMatch(hole -> HoleCells.has(hole, HolesSheet.ALONG));
    return byGaps
        ? fromGaps(plan, reading, wrap, sigma, findings)
        : fromPlaces(reading, wrap, findings);
  }

  private static List<Spot> fromPlaces(List<Hole> reading, double wrap, List<Finding> findings) {
    List<Spot> spots = new ArrayList<>();
    for (Hole hole : reading) {
      if (!HoleCells.has(hole, HolesSheet.ALONG)) {
        findings.add(noPlace(hole));
      } else if (offTheWrap(HoleCells.get(hole, HolesSheet.ALONG), wrap)) {
        findings.add(offTheWrap(hole, wrap));
      } else {
        spots.add(spot(hole, HoleCells.get(hole, HolesSheet.ALONG)));
      }
    }
    return spots;
  }

  private static boolean offTheWrap(double along, double wrap) {
    return along < -OVERLAP * wrap || along > (1 + OVERLAP) * wrap;
  }

  private static Finding offTheWrap(Hole hole, double wrap) {
    return Finding.error(
        hole.row().place(HolesSheet.ALONG),
        WallSays.OFF_THE_WRAP.with(
            WallSays.number(hole.number()),
            Argument.name(hole.ring()),
            WallSays.length(HoleCells.get(hole, HolesSheet.ALONG)),
            WallSays.length(wrap)),
        WallSays.CORRECT_PLACE.with());
  }

  private static Finding noPlace(Hole hole) {
    return Finding.error(
        hole.row().place(HolesSheet.ALONG),
        WallSays.NO_PLACE.with(WallSays.number(hole.number()), Argument.name(hole.ring())),
        WallSays.TYPE_PLACE.with());
  }

  /**
   * Adds up the gaps from the first hole; where they go all round, they are made to close. Behind a
   * hole that is not there no place is known.
   */
  private static List<Spot> fromGaps(
      IntendedRing plan, List<Hole> reading, double wrap, double sigma, List<Finding> findings) {
    int last = reading.size() - 1;
    boolean closed = isClosed(plan, reading);
    double total =
        reading.stream()
            .filter(hole -> HoleCells.has(hole, HolesSheet.GAP))
            .mapToDouble(hole -> HoleCells.get(hole, HolesSheet.GAP))
            .sum();
    double stretch = closed ? wrap / total : 1;
    if (closed) {
      reportMisclosure(reading, total - wrap, sigma, findings);
    }
    List<Spot> spots = new ArrayList<>();
    double along = 0;
    for (int i = 0; i <= last; i++) {
      Hole hole = reading.get(i);
      if (i > 0 && hole.number() != reading.get(i - 1).number() + 1) {
        along = Double.NaN;
      }
      if (Double.isNaN(along) || offTheWrap(along, wrap)) {
        findings.add(noPlace(hole));
        continue;
      }
      spots.add(spot(hole, along));
      along +=
          HoleCells.has(hole, HolesSheet.GAP)
              ? stretch * HoleCells.get(hole, HolesSheet.GAP)
              : Double.NaN;
    }
    return spots;
  }

  private static void reportMisclosure(
      List<Hole> reading, double misclosure, double sigma, List<Finding> findings) {
    if (Math.abs(misclosure) < SHOWN) {
      return;
    }
    Place place = reading.get(0).row().place(HolesSheet.GAP);
    Template gaps = misclosure > 0 ? WallSays.GAPS_LONGER : WallSays.GAPS_SHORTER;
    Message problem =
        gaps.with(
            Argument.name(reading.get(0).ring()),
            Argument.name(reading.get(0).build().name()),
            WallSays.length(Math.abs(misclosure)));
    boolean explained = Math.abs(misclosure) <= 2 * sigma * Math.sqrt(reading.size());
    findings.add(
        explained
            ? Finding.note(place, problem, WallSays.SPREAD.with())
            : Finding.warning(place, problem, WallSays.MEASURE_GAPS.with()));
  }

  private static Spot spot(Hole hole, double along) {
    return new Spot(
        hole.number(),
        along,
        HoleCells.find(hole, HolesSheet.HEIGHT).orElse(Double.NaN),
        HoleCells.find(hole, HolesSheet.DIAMETER),
        1,
        hole.row().place());
  }

  /** The second strip, moved so that it starts where the first did. */
  private static List<Spot> laidOnto(List<Spot> first, List<Spot> second, double wrap) {
    List<Spot[]> pairs = Readings.common(first, second);
    if (pairs.isEmpty()) {
      return second;
    }
    double shift =
        Circular.mean(
            pairs.stream().mapToDouble(pair -> pair[1].a() - pair[0].a()).toArray(), wrap);
    return second.stream()
        .map(spot -> spot.at(near(first, spot, spot.a() - shift, wrap), spot.b()))
        .toList();
  }

  /** The place, moved by whole wraps to the side of the strip on which the first reading is. */
  private static double near(List<Spot> first, Spot spot, double along, double wrap) {
    return first.stream()
        .filter(other -> other.number() == spot.number())
        .findFirst()
        .map(other -> other.a() + Circular.wrapped(along - other.a(), wrap))
        .orElse(along);
  }
}
