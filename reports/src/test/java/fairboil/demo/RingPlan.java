package fairboil.demo;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Holes as intended. Lengths in mm, angles in degrees.
 *
 * @param ring its name
 * @param divisions equal parts of the circle
 * @param skipped the parts without a hole
 * @param round the wrap of a wall, or the radius of the circle on a base
 * @param start on a base, the angle of the first hole
 * @param place where on the can it is
 * @param diameter of the holes
 */
record RingPlan(
    String ring,
    int divisions,
    List<Integer> skipped,
    double round,
    double start,
    Place place,
    double diameter) {

  /** Where on the can a ring is, and what its air is for. */
  enum Place {
    /** Near the upper edge of the inner can. */
    UPPER("wall", "secondary", "top rim"),
    /** Near the lower edge. */
    LOWER("wall", "primary", "bottom rim"),
    /** In the base. */
    BASE("base", "primary", "");

    final String surface;
    final String air;
    final String datum;

    Place(String surface, String air, String datum) {
      this.surface = surface;
      this.air = air;
      this.datum = datum;
    }
  }

  private static final double UPPER_HEIGHT = 13;
  private static final double LOWER_HEIGHT = 11;

  static RingPlan wall(Place place, int divisions, double wrap, double diameter, Integer... skip) {
    String ring = place == Place.UPPER ? "upper" : "lower";
    return new RingPlan(ring, divisions, List.of(skip), wrap, 0, place, diameter);
  }

  static RingPlan base(String ring, int divisions, double radius, double start, double diameter) {
    return new RingPlan(ring, divisions, List.of(), radius, start, Place.BASE, diameter);
  }

  /** Height from the rim that it is measured from. */
  double height() {
    return place == Place.UPPER ? UPPER_HEIGHT : LOWER_HEIGHT;
  }

  int holes() {
    return divisions - skipped.size();
  }

  /** The intended places of its holes, in order. */
  List<Spot> intended() {
    return IntStream.rangeClosed(1, divisions)
        .filter(division -> !skipped.contains(division))
        .mapToObj(this::spot)
        .toList();
  }

  private Spot spot(int division) {
    double share = (division - 1.0) / divisions;
    return place == Place.BASE
        ? new Spot(round, 0).turned(StrictMath.toRadians(start + 360 * share))
        : new Spot(share * round, height());
  }

  /** Its row of {@code rings.csv}. */
  Object[] row(Design design) {
    boolean base = place == Place.BASE;
    String parts = skipped.isEmpty() ? "" : Integer.toString(divisions);
    String without = skipped.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return new Object[] {
      ring,
      design.label(),
      place.surface,
      place.air,
      place.datum,
      holes(),
      parts,
      without,
      base ? "" : Decimal.text(round, 0),
      base ? Decimal.text(round, 1) : "",
      base && round > 0 ? Decimal.text(start, 0) : "",
      base ? "" : Decimal.text(height(), 1),
      Decimal.text(diameter, 1)
    };
  }
}
