package fairboil.demo;

/**
 * A place, in mm: along and height on a wall, x and y on a base; or the difference of two places.
 *
 * @param first along the wrap, or x
 * @param second height from the rim, or y
 */
record Spot(double first, double second) {

  /** This place moved by a difference. */
  Spot plus(Spot difference) {
    return new Spot(first + difference.first, second + difference.second);
  }

  /** This difference made larger or smaller. */
  Spot times(double factor) {
    return new Spot(first * factor, second * factor);
  }

  /** This place turned about the origin. */
  Spot turned(double radians) {
    double cos = StrictMath.cos(radians);
    double sin = StrictMath.sin(radians);
    return new Spot(cos * first - sin * second, sin * first + cos * second);
  }

  /** Square of the distance from the origin. */
  double square() {
    return first * first + second * second;
  }
}
