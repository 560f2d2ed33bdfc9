package fairboil.analysis.layout;

import fairboil.ingest.choice.Surface;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * One ring as intended.
 *
 * @param ring its row
 * @param divisions equal parts of the circle
 * @param used the divisions with a hole, from 0, in order
 */
record Plan(Ring ring, int divisions, List<Integer> used) {

  /**
   * Reads a ring's numbers of holes and divisions; empty if they do not agree, as was said when the
   * sheet was read.
   */
  static Optional<Plan> of(Ring ring) {
    int holes = ring.row().get(RingsSheet.HOLES);
    Set<Integer> skipped =
        new TreeSet<>(ring.row().value(RingsSheet.SKIPPED).orElse(List.<Integer>of()));
    int divisions = ring.row().value(RingsSheet.DIVISIONS).orElse(holes + skipped.size());
    List<Integer> used =
        IntStream.range(0, Math.max(divisions, 0))
            .filter(division -> !skipped.contains(division + 1))
            .boxed()
            .toList();
    return holes < 1 || used.size() != holes
        ? Optional.empty()
        : Optional.of(new Plan(ring, divisions, used));
  }

  String name() {
    return ring.name();
  }

  boolean isOnBase() {
    return ring.row().get(RingsSheet.SURFACE) == Surface.BASE;
  }

  /** How many holes are intended. */
  int holes() {
    return used.size();
  }

  /** The part of a full turn from division 1 to the hole in that slot. */
  double turn(int slot) {
    return (double) used.get(slot) / divisions;
  }

  /** The part of a full turn from the hole in that slot to the hole in a later one. */
  double turnBetween(int slot, int later) {
    double turn = turn(later) - turn(slot);
    return turn > 0 ? turn : turn + 1;
  }

  OptionalDouble diameter() {
    return length(ring.row().value(RingsSheet.DIAMETER));
  }

  OptionalDouble height() {
    return length(ring.row().value(RingsSheet.HEIGHT));
  }

  OptionalDouble wrap() {
    return length(ring.row().value(RingsSheet.WRAP));
  }

  OptionalDouble circle() {
    return length(ring.row().value(RingsSheet.CIRCLE));
  }

  /** Angle of the hole in that slot on the base, rad. */
  double angle(int slot) {
    return ring.row().get(RingsSheet.START).value() + 2 * Math.PI * turn(slot);
  }

  private static OptionalDouble length(Optional<Quantity> given) {
    return given.isPresent() ? OptionalDouble.of(given.get().value()) : OptionalDouble.empty();
  }

  /** The rows of that list that describe rings of one name for one build: the closest wins. */
  static List<Ring> closest(List<Ring> candidates) {
    int best = candidates.stream().mapToInt(Plan::closeness).max().orElse(0);
    return new ArrayList<>(candidates.stream().filter(r -> closeness(r) == best).toList());
  }

  private static int closeness(Ring ring) {
    if (ring.row().value(RingsSheet.BUILD).isPresent()) {
      return 2;
    }
    return ring.row().value(RingsSheet.DESIGN).isPresent() ? 1 : 0;
  }
}
