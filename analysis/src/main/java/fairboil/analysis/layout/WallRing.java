package fairboil.analysis.layout;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Best fit of the holes measured on a wall onto the ring as intended: the rotation round the can is
 * the circular mean of the deviations along the wrap; heights count from the datum.
 */
final class WallRing {

  /** How far off in height a hole may be before its cell must be wrong, as a part of the wrap. */
  private static final double HEIGHT_LIMIT = 0.25;

  private final IntendedRing plan;
  private final WallStrip strip;
  private final List<Spot> spots;
  private final OptionalDouble height;

  private WallRing(IntendedRing plan, WallStrip strip, List<Spot> spots, OptionalDouble height) {
    this.plan = plan;
    this.strip = strip;
    this.spots = spots;
    this.height = height;
  }

  /** Which way the plan runs along the strip, and how the holes are numbered. */
  private record Fit(Numbering numbering, int direction, double rotation, double squares) {}

  static Optional<RingResult> of(
      Key build,
      IntendedRing plan,
      List<Hole> holes,
      ReadingUncertainty reading,
      List<Finding> findings) {
    return WallStrip.of(plan, holes, reading, findings)
        .flatMap(strip -> of(build, plan, strip, reading.sigma(), findings));
  }

  private static Optional<RingResult> of(
      Key build, IntendedRing plan, WallStrip strip, double sigma, List<Finding> findings) {
    boolean heights = strip.spots().stream().anyMatch(spot -> !Double.isNaN(spot.b()));
    if (!heights && !strip.spots().isEmpty()) {
      findings.add(noHeights(build, plan, strip));
    }
    OptionalDouble height = heights ? heightOf(plan, strip, findings) : OptionalDouble.empty();
    List<Spot> spots = new ArrayList<>();
    for (Spot spot : strip.spots()) {
      Optional<Finding> trouble =
          heights ? heightTrouble(plan, strip, spot, height.orElseThrow()) : Optional.empty();
      trouble.ifPresentOrElse(findings::add, () -> spots.add(spot));
    }
    return spots.isEmpty()
        ? Optional.empty()
        : Optional.of(new WallRing(plan, strip, spots, height).result(build, sigma, findings));
  }

  private static Finding noHeights(Key build, IntendedRing plan, WallStrip strip) {
    return Finding.warning(
        strip.spots().get(0).place().column(HolesSheet.HEIGHT.name()),
        WallSays.NO_HEIGHTS.with(Argument.name(plan.name()), Argument.name(build.name())),
        WallSays.MEASURE_HEIGHTS.with(Argument.sheet(RingsSheet.SCHEMA.file())));
  }

  /** The intended height, else the mean of those measured. */
  private static OptionalDouble heightOf(
      IntendedRing plan, WallStrip strip, List<Finding> findings) {
    if (plan.height().isPresent()) {
      return plan.height();
    }
    findings.add(
        Finding.note(
            plan.ring().row().place(),
            WallSays.NO_INTENDED_HEIGHT.with(Argument.name(plan.name())),
            WallSays.TYPE_INTENDED_HEIGHT.with()));
    return strip.spots().stream().mapToDouble(Spot::b).filter(b -> !Double.isNaN(b)).average();
  }

  private static Optional<Finding> heightTrouble(
      IntendedRing plan, WallStrip strip, Spot spot, double height) {
    if (Double.isNaN(spot.b())) {
      return Optional.of(
          Finding.error(
              spot.place().column(HolesSheet.HEIGHT.name()),
              WallSays.HOLE_WITHOUT_HEIGHT.with(
                  WallSays.number(spot.number()), Argument.name(plan.name())),
              WallSays.TYPE_HEIGHT.with()));
    }
    if (Math.abs(spot.b() - height) > HEIGHT_LIMIT * strip.wrap()) {
      return Optional.of(
          Finding.error(
              spot.place().column(HolesSheet.HEIGHT.name()),
              WallSays.OFF_IN_HEIGHT.with(
                  WallSays.number(spot.number()),
                  Argument.name(plan.name()),
                  WallSays.length(Math.abs(spot.b() - height))),
              WallSays.CORRECT_HEIGHT.with(Argument.sheet(RingsSheet.SCHEMA.file()))));
    }
    return Optional.empty();
  }

  private RingResult result(Key build, double sigma, List<Finding> findings) {
    Fit fit = best();
    List<Placed> placed = new ArrayList<>();
    for (Spot spot : spots) {
      int slot = fit.numbering.slot(spot.number());
      placed.add(
          new Placed(
              spot,
              slot,
              new HoleError(
                  spot.number(),
                  plan.turn(slot) * strip.wrap(),
                  height.orElse(0),
                  Circular.wrapped(deviation(spot, fit) - fit.rotation, strip.wrap()),
                  height.isPresent() ? spot.b() - height.getAsDouble() : 0)));
    }
    reportFarOff(build, placed, findings);
    RingFigures figures = new RingFigures(List.of(plan), List.of(placed), sigma);
    double turnPerLength = 2 * Math.PI / strip.wrap();
    boolean offset = height.isPresent() && plan.height().isPresent();
    return figures.result(
        build,
        new RingFigures.FitTaken(
            strip.wrap(),
            fit.rotation * turnPerLength,
            figures.readingOfMean() * turnPerLength,
            height.isPresent() ? 2 : 1,
            height.isPresent() && plan.height().isEmpty() ? 2 : 1,
            offset ? RingFigures.Offset.KNOWN : RingFigures.Offset.NOT_KNOWN));
  }

  /** A hole so far off that it may have been counted for its neighbour. */
  private void reportFarOff(Key build, List<Placed> placed, List<Finding> findings) {
    double half = strip.wrap() / plan.divisions() / 2;
    for (Placed hole : placed) {
      if (Math.abs(hole.error().alongError()) > half) {
        findings.add(
            Finding.warning(
                hole.spot().place(),
                WallSays.OFF_ALONG.with(
                    WallSays.number(hole.spot().number()),
                    Argument.name(plan.name()),
                    Argument.name(build.name()),
                    WallSays.length(Math.abs(hole.error().alongError()))),
                WallSays.LOOK_AGAIN.with()));
      }
    }
  }

  /** The numbering with the least squares; the plan's own where several fit alike. */
  private Fit best() {
    double noBetter = 1e-10 * strip.wrap() * strip.wrap();
    Fit best = null;
    for (int direction = 1; direction >= -1; direction -= 2) {
      for (Numbering numbering : Numbering.all(plan.holes())) {
        Fit fit = fit(numbering, direction);
        if (best == null || fit.squares < best.squares - noBetter) {
          best = fit;
        }
      }
    }
    return Objects.requireNonNull(best);
  }

  private Fit fit(Numbering numbering, int direction) {
    Fit unturned = new Fit(numbering, direction, 0, 0);
    double[] deviations = spots.stream().mapToDouble(spot -> deviation(spot, unturned)).toArray();
    double rotation = Circular.mean(deviations, strip.wrap());
    double squares = 0;
    for (double deviation : deviations) {
      double error = Circular.wrapped(deviation - rotation, strip.wrap());
      squares += error * error;
    }
    return new Fit(numbering, direction, rotation, squares);
  }

  private double deviation(Spot spot, Fit fit) {
    return fit.direction * spot.a() - plan.turn(fit.numbering.slot(spot.number())) * strip.wrap();
  }
}
