package fairboil.analysis.figure;

import fairboil.ingest.sheet.Key;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of an uncertainty budget.
 *
 * @param influence where the uncertainty comes from
 * @param contribution its share of the standard uncertainty, |sensitivity| × u, at least 0, in the
 *     unit of the result as a difference
 * @param degreesOfFreedom above 0; infinite for a type B evaluation
 * @param sharedBy the instrument whose readings share this part, so that it cancels in differences
 *     between them and does not average out; empty for an independent part
 */
public record BudgetLine(
    Influence influence, double contribution, double degreesOfFreedom, Optional<Key> sharedBy) {

  /** Checks the ranges. */
  public BudgetLine {
    Objects.requireNonNull(influence, "influence");
    Objects.requireNonNull(sharedBy, "sharedBy");
    if (!(contribution >= 0) || Double.isInfinite(contribution)) {
      throw new IllegalArgumentException("not a contribution: " + contribution);
    }
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException("not degrees of freedom: " + degreesOfFreedom);
    }
  }

  /** An independent part that is well known (type B). */
  public static BudgetLine independent(Influence influence, double contribution) {
    return new BudgetLine(influence, contribution, Double.POSITIVE_INFINITY, Optional.empty());
  }

  /** A part that all readings of one instrument share (type B). */
  public static BudgetLine shared(Influence influence, double contribution, Key instrument) {
    return new BudgetLine(
        influence, contribution, Double.POSITIVE_INFINITY, Optional.of(instrument));
  }

  double variance() {
    return contribution * contribution;
  }
}
