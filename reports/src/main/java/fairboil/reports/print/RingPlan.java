package fairboil.reports.print;

import fairboil.ingest.choice.Datum;
import fairboil.ingest.choice.Surface;
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
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * One row of {@code rings.csv} as it is drawn. Lengths in millimetres.
 *
 * @param ring the row
 * @param divisions equal parts of the circle, at least 1
 * @param used the numbers of the divisions with a hole, from 1, in order; unmodifiable
 */
record RingPlan(Ring ring, int divisions, List<Integer> used) {

  /** More parts than a can has room for. */
  private static final int MOST_DIVISIONS = 1000;

  /** Copies the divisions. */
  RingPlan {
    used = List.copyOf(used);
  }

  /** Reads a row, or says why its holes and divisions do not agree. */
  static Optional<RingPlan> of(Ring ring, List<Finding> findings) {
    int holes = ring.row().get(RingsSheet.HOLES);
    Set<Integer> skipped =
        new TreeSet<>(ring.row().value(RingsSheet.SKIPPED).orElse(List.<Integer>of()));
    int divisions = ring.row().value(RingsSheet.DIVISIONS).orElse(holes + skipped.size());
    if (divisions > MOST_DIVISIONS) {
      findings.add(tooMany(ring, divisions));
      return Optional.empty();
    }
    List<Integer> used =
        IntStream.rangeClosed(1, divisions).filter(n -> !skipped.contains(n)).boxed().toList();
    if (holes < 1 || used.size() != holes) {
      findings.add(disagreement(ring, holes, divisions, skipped.size()));
      return Optional.empty();
    }
    return Optional.of(new RingPlan(ring, divisions, used));
  }

  private static Finding tooMany(Ring ring, int divisions) {
    return Finding.error(
        ring.row().place(RingsSheet.DIVISIONS),
        "ring " + ring.name() + " has " + divisions + " divisions, more than can be drawn",
        "type at most " + MOST_DIVISIONS + "; until then nothing is printed for it");
  }

  private static Finding disagreement(Ring ring, int holes, int divisions, int skipped) {
    return Finding.error(
        ring.row().place(RingsSheet.HOLES),
        "ring "
            + ring.name()
            + " has "
            + holes
            + " holes, but "
            + divisions
            + " divisions less "
            + skipped
            + " skipped do not leave that many",
        "make holes, divisions and skipped agree; until then nothing is printed for it");
  }

  String name() {
    return ring.name();
  }

  boolean isOnBase() {
    return ring.row().get(RingsSheet.SURFACE) == Surface.BASE;
  }

  Datum datum() {
    return ring.row().get(RingsSheet.DATUM);
  }

  int holes() {
    return used.size();
  }

  /** The number of the hole on that division, from 1, or empty if it is skipped. */
  OptionalInt holeOn(int division) {
    int index = used.indexOf(division);
    return index < 0 ? OptionalInt.empty() : OptionalInt.of(index + 1);
  }

  /** Angle of a division on the base, rad. */
  double angle(int division) {
    return ring.row().get(RingsSheet.START).value() + 2 * Math.PI * (division - 1) / divisions;
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
    Optional<Quantity> given = ring.row().value(column);
    return given.isPresent()
        ? OptionalDouble.of(given.get().in(Unit.MILLIMETRE))
        : OptionalDouble.empty();
  }
}
