package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import java.util.Locale;
import java.util.Optional;

/**
 * The scatter behind an estimate, which falls with the root of the number of units.
 *
 * @param standardError what scatter makes uncertain now
 * @param units how many units there are
 * @param degreesOfFreedom of the standard error; each further unit adds one
 * @param shared standard uncertainty that all share, which no number of them reduces
 * @param unit what one is, in the plural: builds or burns
 * @param what what is estimated: mean, difference or slope
 */
record Scatter(
    double standardError,
    int units,
    double degreesOfFreedom,
    double shared,
    String unit,
    String what)
    implements Outlook {

  @Override
  public Optional<String> needed(Estimate estimate, Interval bounds, double confidence) {
    double distance = Outlook.distance(estimate.value(), bounds);
    if (Measured.coverageFactor(confidence, Double.POSITIVE_INFINITY) * shared >= distance) {
      return shared > 0
          ? Optional.of("with this sensor no number of " + unit + " would settle it")
          : Optional.empty();
    }
    int n = units + 1;
    while (n <= MOST && !isEnough(n, distance, confidence)) {
      n++;
    }
    return Optional.of(Outlook.clause(n, unit, what));
  }

  private boolean isEnough(int n, double distance, double confidence) {
    double scatter = standardError * Math.sqrt((double) units / n);
    double factor = Measured.coverageFactor(confidence, degreesOfFreedom + n - units);
    return factor * Math.hypot(scatter, shared) < distance;
  }

  /** Builds with as many burns each as there are on average, such as {@code builds of 4 burns}. */
  static String builds(int burns, int builds) {
    double each = (double) burns / builds;
    String number = String.format(Locale.ROOT, "%.1f", each).replace(".0", "");
    return "builds of " + number + (number.equals("1") ? " burn each" : " burns each");
  }
}
