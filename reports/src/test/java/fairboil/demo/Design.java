package fairboil.demo;

import java.util.List;

/** The two designs of the invented allotment society. */
enum Design {
  /** Tall and narrow. */
  LEEK(
      "Leek",
      "Odile",
      List.of(
          RingPlan.wall(RingPlan.Place.UPPER, 18, 311, 5.5),
          RingPlan.wall(RingPlan.Place.LOWER, 10, 311, 8),
          RingPlan.base("base circle", 8, 30, 0, 6),
          RingPlan.base("base centre", 1, 0, 0, 6))),
  /** Short and wide. */
  MARROW(
      "Marrow",
      "Tansy",
      List.of(
          RingPlan.wall(RingPlan.Place.UPPER, 20, 339, 5.5),
          RingPlan.wall(RingPlan.Place.LOWER, 12, 339, 8, 4, 10),
          RingPlan.base("base circle", 9, 33, 10, 6),
          RingPlan.base("base centre", 1, 0, 0, 8)));

  private final String label;
  private final String tester;
  private final List<RingPlan> rings;

  Design(String label, String tester, List<RingPlan> rings) {
    this.label = label;
    this.tester = tester;
    this.rings = rings;
  }

  /** Its name in the sheets. */
  String label() {
    return label;
  }

  /** Who burns every stove of it: the unfairness of the demonstration. */
  String tester() {
    return tester;
  }

  /** Its rings, the upper one first. */
  List<RingPlan> rings() {
    return rings;
  }

  /** Its rings on the wall. */
  List<RingPlan> wallRings() {
    return rings.stream().filter(ring -> ring.place() != RingPlan.Place.BASE).toList();
  }

  /** Its rings on the base, fitted together. */
  List<RingPlan> baseRings() {
    return rings.stream().filter(ring -> ring.place() == RingPlan.Place.BASE).toList();
  }
}
