package fairboil.reports.print;

import fairboil.analysis.layout.IntendedRing;
import fairboil.ingest.choice.Datum;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One ring as it is drawn: {@link IntendedRing} in millimetres.
 *
 * @param intended the ring
 */
record RingPlan(IntendedRing intended) {

  /** More parts than a can has room for. */
  private static final int MOST_DIVISIONS = 1000;

  /** Reads a legible row, or says why its holes and divisions do not agree. */
  static Optional<RingPlan> of(Ring ring, List<Finding> findings) {
    IntendedRing.Numbers numbers = IntendedRing.Numbers.of(ring);
    if (numbers.divisions() > MOST_DIVISIONS) {
      findings.add(tooMany(ring, numbers.divisions()));
      return Optional.empty();
    }
    Optional<IntendedRing> intended = IntendedRing.of(ring);
    if (intended.isEmpty()) {
      findings.add(disagreement(ring, numbers));
    }
    return intended.map(RingPlan::new);
  }

  private static Finding tooMany(Ring ring, int divisions) {
    return Finding.error(
        ring.row().place(RingsSheet.DIVISIONS),
        PrintSays.TOO_MANY_DIVISIONS.with(Argument.name(ring.name()), Argument.count(divisions)),
        PrintSays.AT_MOST.with(Argument.count(MOST_DIVISIONS)));
  }

  private static Finding disagreement(Ring ring, IntendedRing.Numbers numbers) {
    return Finding.error(
        ring.row().place(RingsSheet.HOLES),
        PrintSays.HOLES_DISAGREE.with(
            Argument.name(ring.name()),
            Argument.count(numbers.holes()),
            Argument.count(numbers.divisions()),
            Argument.count(numbers.skipped().size())),
        PrintSays.MAKE_AGREE.with());
  }

  /** The row. */
  Ring ring() {
    return intended.ring();
  }

  String name() {
    return intended.name();
  }

  /** Equal parts of the circle, at least 1. */
  int divisions() {
    return intended.divisions();
  }

  boolean isOnBase() {
    return intended.isOnBase();
  }

  Datum datum() {
    return ring().row().get(RingsSheet.DATUM);
  }

  /** The edge that heights count from; whether it was told or assumed is said too. */
  String rim() {
    return datum().label() + (isDatumTold() ? "" : " (assumed: no datum given)");
  }

  boolean isDatumTold() {
    return ring().row().cell(RingsSheet.DATUM).isPresent();
  }

  int holes() {
    return intended.holes();
  }

  /** The number of the hole on that division, from 1, or empty if it is skipped. */
  OptionalInt holeOn(int division) {
    return intended.holeOn(division);
  }

  /** Angle of a division on the base, rad. */
  double angle(int division) {
    return intended.angleOfDivision(division);
  }

  OptionalDouble wrap() {
    return length(RingsSheet.WRAP);
  }

  OptionalDouble circle() {
    return length(RingsSheet.CIRCLE);
  }

  OptionalDouble height() {
    return length(RingsSheet.HEIGHT);
  }

  /** Diameter of the holes; empty if it was not told or is none. */
  OptionalDouble diameter() {
    OptionalDouble told = length(RingsSheet.DIAMETER);
    return told.isPresent() && told.getAsDouble() > 0 ? told : OptionalDouble.empty();
  }

  private OptionalDouble length(Column<Quantity> column) {
    Optional<Quantity> given = ring().row().value(column);
    return given.isPresent()
        ? OptionalDouble.of(given.get().in(Unit.MILLIMETRE))
        : OptionalDouble.empty();
  }
}
