package fairboil.analysis.layout;

import fairboil.ingest.finding.Place;
import java.util.OptionalDouble;

/**
 * A hole as measured. On a wall {@code a} is the place along the strip and {@code b} the height; on
 * a base they are x and y. In metres.
 *
 * @param number the number of the hole
 * @param a first coordinate
 * @param b second coordinate; NaN if no height was taken
 * @param diameter its diameter, if it was taken
 * @param readings how many readings it is the mean of
 * @param place its first row
 */
record Spot(int number, double a, double b, OptionalDouble diameter, int readings, Place place) {

  /** The same hole at another place. */
  Spot at(double newA, double newB) {
    return new Spot(number, newA, newB, diameter, readings, place);
  }

  /** The same hole, averaged with another reading of it. */
  Spot averagedWith(Spot other) {
    int all = readings + other.readings;
    return new Spot(
        number,
        (a * readings + other.a * other.readings) / all,
        Double.isNaN(other.b)
            ? b
            : Double.isNaN(b) ? other.b : (b * readings + other.b * other.readings) / all,
        diameter.isPresent() && other.diameter.isPresent()
            ? OptionalDouble.of(
                (diameter.getAsDouble() * readings + other.diameter.getAsDouble() * other.readings)
                    / all)
            : diameter.isPresent() ? diameter : other.diameter,
        all,
        place);
  }
}
