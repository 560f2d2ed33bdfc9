package fairboil.analysis.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * How the numbers that a person gave to the holes of a ring run against the numbers of the plan:
 * they may start at any hole and go either way round.
 *
 * @param slots how many holes the plan has
 * @param start the plan's hole (from 0) that the person called 1
 * @param step 1 if both go the same way round, −1 if not
 */
record Numbering(int slots, int start, int step) {

  /** All that are possible; the plan's own numbering comes first. */
  static List<Numbering> all(int slots) {
    List<Numbering> all = new ArrayList<>();
    for (int step = 1; step >= -1; step -= 2) {
      for (int start = 0; start < slots; start++) {
        all.add(new Numbering(slots, start, step));
      }
    }
    return all;
  }

  /** The plan's hole, from 0, that the person gave this number, from 1. */
  int slot(int number) {
    return Math.floorMod(start + step * (number - 1), slots);
  }
}
