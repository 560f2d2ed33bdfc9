package fairboil.analysis.figure;

import fairboil.ingest.sheet.Key;
import java.util.Objects;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * One line of an uncertainty budget.
 *
 * @param influence where the uncertainty comes from
 * @param contribution its share of the standard uncertainty, |sensitivity| × u, at least 0, in the
 *     unit of the result as a difference
 * @param degreesOfFreedom above 0; infinite for a type B evaluation
 * @param sharedBy the instrument whose readings share this part, so that it cancels in differences
 *     between them and does not average out; empty for an independent part
 * @param shape the distribution that it stands for
 */
public record BudgetLine(
    Influence influence,
    double contribution,
    double degreesOfFreedom,
    Optional<Key> sharedBy,
    Shape shape) {

  /** Checks the ranges. */
  public BudgetLine {
    Objects.requireNonNull(influence, "influence");
    Objects.requireNonNull(sharedBy, "sharedBy");
    Objects.requireNonNull(shape, "shape");
    if (!(contribution >= 0) || Double.isInfinite(contribution)) {
      throw new IllegalArgumentException("not a contribution: " + contribution);
    }
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException("not degrees of freedom: " + degreesOfFreedom);
    }
  }

  /** A part whose distribution is normal. */
  public BudgetLine(
      Influence influence, double contribution, double degreesOfFreedom, Optional<Key> sharedBy) {
    this(influence, contribution, degreesOfFreedom, sharedBy, Shape.NORMAL);
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

  /** The same part of a result that changes by {@code factor} where this one's changes by 1. */
  public BudgetLine scaledBy(double factor) {
    return new BudgetLine(
        influence, contribution * Math.abs(factor), degreesOfFreedom, sharedBy, shape);
  }

  /** The same part under the name of what it came in with. */
  public BudgetLine named(Influence other) {
    return new BudgetLine(other, contribution, degreesOfFreedom, sharedBy, shape);
  }

  /** The same part with another distribution of the same standard uncertainty. */
  public BudgetLine shaped(Shape other) {
    return new BudgetLine(influence, contribution, degreesOfFreedom, sharedBy, other);
  }

  /** Draws by how much this part puts the result off. */
  double draw(RandomGenerator random) {
    return shape.draw(contribution, degreesOfFreedom, random);
  }

  double variance() {
    return contribution * contribution;
  }
}
