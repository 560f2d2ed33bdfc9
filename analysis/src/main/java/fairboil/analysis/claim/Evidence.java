package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * What the data know of the quantity that a claim is about.
 *
 * @param estimator gives the estimate with its interval at a confidence; empty if there is none
 * @param runs how many runs it stands on
 * @param builds how many builds it stands on
 * @param reason what needs saying of it, a clause
 * @param reach whether the truth may lie beyond the estimate
 * @param outlook how many would be needed to settle it; where that can be told
 */
record Evidence(
    DoubleFunction<Optional<Estimate>> estimator,
    int runs,
    int builds,
    Optional<Message> reason,
    Reach reach,
    Optional<Outlook> outlook) {

  /** Whether the truth may lie beyond the estimate. */
  enum Reach {
    /** The estimate is one of the quantity itself. */
    WHOLE,
    /** The truth is larger: runs that did not boil took longer than any that did. */
    FROM_BELOW
  }

  /** Evidence of the quantity itself. */
  Evidence(
      DoubleFunction<Optional<Estimate>> estimator,
      int runs,
      int builds,
      Optional<Message> reason) {
    this(estimator, runs, builds, reason, Reach.WHOLE, Optional.empty());
  }

  Evidence fromBelow(Message why) {
    return new Evidence(estimator, runs, builds, Optional.of(why), Reach.FROM_BELOW, outlook);
  }

  Evidence with(Outlook known) {
    return new Evidence(estimator, runs, builds, reason, reach, Optional.of(known));
  }

  /** The same with another clause to its reason. */
  Evidence saying(Message more) {
    Message all =
        reason
            .map(first -> ClaimSays.BOTH.with(Argument.clause(first), Argument.clause(more)))
            .orElse(more);
    return new Evidence(estimator, runs, builds, Optional.of(all), reach, outlook);
  }

  /** No estimate, for a reason. */
  static Evidence none(int runs, int builds, Message reason) {
    return new Evidence(confidence -> Optional.empty(), runs, builds, Optional.of(reason));
  }

  /** An estimate with a standard error and Student's t. */
  static Evidence student(
      double value,
      double standardError,
      double degreesOfFreedom,
      int runs,
      int builds,
      Optional<Message> reason) {
    return new Evidence(
        confidence ->
            Optional.of(
                new Estimate(
                    value,
                    Interval.around(
                        value,
                        Measured.coverageFactor(confidence, degreesOfFreedom) * standardError))),
        runs,
        builds,
        reason);
  }
}
