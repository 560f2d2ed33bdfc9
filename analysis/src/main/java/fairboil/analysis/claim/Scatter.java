package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.model.Noncentral;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The scatter behind an estimate, which falls with the root of the number of units.
 *
 * @param standardError what scatter makes uncertain now
 * @param units how many units there are
 * @param degreesOfFreedom of the standard error; each further unit adds one
 * @param shared standard uncertainty that all share, which no number of them reduces
 * @param unit what one is, in the plural: builds or burns
 * @param what what is taken to be as found: that the true mean, difference or slope is
 */
record Scatter(
    double standardError,
    int units,
    double degreesOfFreedom,
    double shared,
    Message unit,
    Message what)
    implements Outlook {

  @Override
  public Optional<Message> needed(Estimate estimate, Interval bounds, double confidence) {
    double distance = Outlook.distance(estimate.value(), bounds);
    if (Measured.coverageFactor(confidence, Double.POSITIVE_INFINITY) * shared >= distance) {
      return shared > 0
          ? Optional.of(OutlookSays.NO_NUMBER.with(Argument.clause(unit)))
          : Optional.empty();
    }
    OptionalInt needed = Outlook.fewest(units + 1, n -> power(n, distance, confidence));
    return Optional.of(Outlook.clause(needed, unit, what));
  }

  /**
   * How often the interval of so many units leaves a bound at that distance: by the noncentral t
   * distribution. What all share takes from the distance what it adds to the interval.
   */
  private double power(int n, double distance, double confidence) {
    double scatter = standardError * Math.sqrt((double) units / n);
    double df = degreesOfFreedom + n - units;
    double factor = Measured.coverageFactor(confidence, df);
    double left = distance - factor * (Math.hypot(scatter, shared) - scatter);
    return scatter == 0 ? 1 : 1 - Noncentral.t(factor, df, left / scatter);
  }
}
