package fairboil.analysis.claim;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import java.util.Optional;

/**
 * The scatter of the units behind a mean: from it follows about how many would settle a claim.
 *
 * @param sd standard deviation of a unit
 * @param units how many there are
 * @param shared standard uncertainty that all share, which no number of them reduces
 * @param unit what one is, in the plural: builds or runs
 */
record Scatter(double sd, int units, double shared, String unit) {

  private static final int MOST = 1000;

  /** What would be needed for the interval to leave the nearest bound, as a clause. */
  Optional<String> needed(double value, Interval bounds, double confidence) {
    double distance = Math.min(Math.abs(value - bounds.low()), Math.abs(value - bounds.high()));
    if (Measured.coverageFactor(confidence, Double.POSITIVE_INFINITY) * shared >= distance) {
      return shared > 0
          ? Optional.of("with this sensor no number of " + unit + " would settle it")
          : Optional.empty();
    }
    for (int n = units + 1; n <= MOST; n++) {
      double standardError = Math.hypot(sd / Math.sqrt(n), shared);
      if (Measured.coverageFactor(confidence, n - 1.0) * standardError < distance) {
        return Optional.of(
            "about " + n + " such " + unit + " would settle it, if the mean stays where it is");
      }
    }
    return Optional.of("more than " + MOST + " such " + unit + " would be needed to settle it");
  }
}
