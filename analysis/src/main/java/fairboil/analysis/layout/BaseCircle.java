package fairboil.analysis.layout;

/**
 * A circle of holes on a base, within the pattern of the whole base.
 *
 * @param plan the circle as intended
 * @param radius its radius, m; 0 for a centre hole
 * @param local how many holes of the same ring come before it
 * @param global how many holes of the base come before it
 */
record BaseCircle(IntendedRing plan, double radius, int local, int global) {

  double planX(int slot) {
    return radius * Math.cos(plan.angle(slot));
  }

  double planY(int slot) {
    return radius * Math.sin(plan.angle(slot));
  }

  boolean has(Spot spot) {
    return spot.number() > global && spot.number() <= global + plan.holes();
  }

  /** The number of a hole within this circle, from 1. */
  int numberHere(Spot spot) {
    return spot.number() - global;
  }
}
