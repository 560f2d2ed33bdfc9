package fairboil.analysis.layout;

import fairboil.ingest.choice.Surface;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Build;
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
 * One ring as intended: the one reading of a row of {@code rings.csv} that analysis, plans and
 * prints share. Lengths in metres, angles in radians.
 *
 * @param ring its row
 * @param divisions equal parts of the circle, at least 1
 * @param used the divisions with a hole, from 0, in order; unmodifiable
 */
public record IntendedRing(Ring ring, int divisions, List<Integer> used) {

  /** Copies the divisions. */
  public IntendedRing {
    used = List.copyOf(used);
  }

  /** What a legible row says of holes and divisions, whether they agree or not. */
  public record Numbers(int holes, int divisions, Set<Integer> skipped) {

    /** Reads them; without divisions there are as many as it takes. */
    public static Numbers of(Ring ring) {
      int holes = ring.row().get(RingsSheet.HOLES);
      Set<Integer> skipped =
          new TreeSet<>(ring.row().value(RingsSheet.SKIPPED).orElse(List.<Integer>of()));
      return new Numbers(
          holes,
          ring.row().value(RingsSheet.DIVISIONS).orElse(holes + skipped.size()),
          Set.copyOf(skipped));
    }

    private List<Integer> used() {
      return IntStream.range(0, Math.max(divisions, 0))
          .filter(division -> !skipped.contains(division + 1))
          .boxed()
          .toList();
    }
  }

  /**
   * Reads a ring; empty if something given of it could not be read, or its numbers of holes and
   * divisions do not agree.
   */
  public static Optional<IntendedRing> of(Ring ring) {
    if (!ring.isLegible()) {
      return Optional.empty();
    }
    Numbers numbers = Numbers.of(ring);
    List<Integer> used = numbers.used();
    return numbers.holes < 1 || used.size() != numbers.holes
        ? Optional.empty()
        : Optional.of(new IntendedRing(ring, numbers.divisions, used));
  }

  /** The name of the ring. */
  public String name() {
    return ring.name();
  }

  /** Whether the holes are in a base, not in a wall. */
  public boolean isOnBase() {
    return isOnBase(ring);
  }

  /** Whether that row is about holes in a base. */
  public static boolean isOnBase(Ring ring) {
    return ring.row().value(RingsSheet.SURFACE).filter(Surface.BASE::equals).isPresent();
  }

  /** How many holes are intended. */
  public int holes() {
    return used.size();
  }

  /** The number of the hole on a division, both from 1; empty if it is skipped. */
  public OptionalInt holeOn(int division) {
    int slot = used.indexOf(division - 1);
    return slot < 0 ? OptionalInt.empty() : OptionalInt.of(slot + 1);
  }

  /** The part of a full turn from division 1 to the hole in that slot, from 0. */
  public double turn(int slot) {
    return (double) used.get(slot) / divisions;
  }

  /** The part of a full turn from the hole in that slot to the hole in a later one. */
  double turnBetween(int slot, int later) {
    double turn = turn(later) - turn(slot);
    return turn > 0 ? turn : turn + 1;
  }

  /** Diameter of the holes, if told. */
  public OptionalDouble diameter() {
    return length(RingsSheet.DIAMETER);
  }

  /** Height above or below the rim, if told. */
  public OptionalDouble height() {
    return length(RingsSheet.HEIGHT);
  }

  /** The wrap, if told. */
  public OptionalDouble wrap() {
    return length(RingsSheet.WRAP);
  }

  /** Radius of the circle on a base, if told. */
  public OptionalDouble circle() {
    return length(RingsSheet.CIRCLE);
  }

  /** Angle of the hole in that slot on the base. */
  double angle(int slot) {
    return angleOfDivision(used.get(slot) + 1);
  }

  /** Angle of a division on the base, from 1. */
  public double angleOfDivision(int division) {
    return ring.row().get(RingsSheet.START).value() + 2 * Math.PI * (division - 1) / divisions;
  }

  private OptionalDouble length(Column<Quantity> column) {
    Optional<Quantity> given = ring.row().value(column);
    return given.isPresent() ? OptionalDouble.of(given.get().value()) : OptionalDouble.empty();
  }

  /**
   * The rows that describe the rings of a build, in the order of the sheet: of those of one name
   * the closest, one for the build itself before one for its design before one for all.
   */
  public static List<Ring> rowsOf(Build build, List<Ring> rings) {
    List<Ring> own = rings.stream().filter(ring -> ring.isOf(build)).toList();
    return own.stream().filter(ring -> closeness(ring) == closest(own, ring.name())).toList();
  }

  private static int closest(List<Ring> rings, String name) {
    return rings.stream()
        .filter(ring -> ring.name().equals(name))
        .mapToInt(IntendedRing::closeness)
        .max()
        .orElse(0);
  }

  private static int closeness(Ring ring) {
    if (ring.row().value(RingsSheet.BUILD).isPresent()) {
      return 2;
    }
    return ring.row().value(RingsSheet.DESIGN).isPresent() ? 1 : 0;
  }
}
