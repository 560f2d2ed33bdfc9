package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.figure.Interval;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.Relation;

/**
 * What a claim says of its quantity.
 *
 * @param relation at most, at least or no different from
 * @param holdsFor the mean, or most runs
 * @param bounds the values for which it holds
 */
record Statement(Relation relation, HoldsFor holdsFor, Interval bounds) {

  static Statement of(Relation relation, HoldsFor holdsFor, double value, double margin) {
    return new Statement(
        relation,
        holdsFor,
        switch (relation) {
          case AT_MOST -> new Interval(Double.NEGATIVE_INFINITY, value);
          case AT_LEAST -> new Interval(value, Double.POSITIVE_INFINITY);
          case NO_DIFFERENT_FROM -> Interval.around(value, margin);
        });
  }

  /**
   * The confidence of the interval to read the verdict off, for a chance of error alpha: equality
   * of means is tested from both sides (two one-sided tests: Schuirmann, Journal of
   * Pharmacokinetics and Biopharmaceutics 15, 1987), so its interval is the narrower one at 1 − 2α.
   */
  double confidence(double alpha) {
    boolean fromBothSides =
        relation == Relation.NO_DIFFERENT_FROM && holdsFor == HoldsFor.ON_AVERAGE;
    return fromBothSides ? 1 - 2 * alpha : 1 - alpha;
  }

  Verdict verdict(Interval interval) {
    if (bounds.low() <= interval.low() && interval.high() <= bounds.high()) {
      return Verdict.SUPPORTED;
    }
    return interval.high() < bounds.low() || interval.low() > bounds.high()
        ? Verdict.CONTRADICTED
        : Verdict.NOT_SETTLED;
  }

  /** Whether a verdict from an estimate that is too low holds for the truth, which is higher. */
  boolean holdsBeyond(Verdict verdict) {
    return (relation == Relation.AT_MOST && verdict == Verdict.CONTRADICTED)
        || (relation == Relation.AT_LEAST && verdict == Verdict.SUPPORTED);
  }
}
