package fairboil.analysis.figure;

import fairboil.ingest.dimension.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;

/**
 * An uncertainty budget: the parts of a standard uncertainty, line by line, uncorrelated with each
 * other. Combined by JCGM 100:2008, equation (11a).
 *
 * @param lines the lines; unmodifiable
 */
public record Budget(List<BudgetLine> lines) {

  private static final double DOMINATES = 0.3;

  /** A budget without lines. */
  public static final Budget NONE = new Budget(List.of());

  /** Copies the lines. */
  public Budget {
    lines = List.copyOf(lines);
  }

  /** A budget of the given lines. */
  public static Budget of(BudgetLine... lines) {
    return new Budget(List.of(lines));
  }

  /** This budget with further lines. */
  public Budget and(BudgetLine... more) {
    List<BudgetLine> all = new ArrayList<>(lines);
    all.addAll(List.of(more));
    return new Budget(all);
  }

  /** This budget with the lines of another, uncorrelated with it. */
  public Budget and(Budget other) {
    return and(other.lines.toArray(new BudgetLine[0]));
  }

  /**
   * The budget of a result that changes by {@code sensitivity} for each unit by which this one's
   * result does (JCGM 100:2008, 5.1.3).
   */
  public Budget scaledBy(double sensitivity) {
    return new Budget(lines.stream().map(line -> line.scaledBy(sensitivity)).toList());
  }

  /** The same parts, all under the name of what they came in with. */
  public Budget named(Influence influence) {
    return new Budget(lines.stream().map(line -> line.named(influence)).toList());
  }

  /**
   * Whether a rectangular part makes up so much of the variance that an interval of Student's t
   * would be too wide: more than {@value #DOMINATES} of it.
   */
  public boolean isMainlyRectangular() {
    double rectangular = rootSumOfSquares(line -> line.shape() == Shape.RECTANGULAR);
    return rectangular * rectangular > DOMINATES * combined() * combined();
  }

  /** Draws by how much all parts together put the result off (JCGM 101:2008, 7.3). */
  public double draw(RandomGenerator random) {
    double sum = 0;
    for (BudgetLine line : lines) {
      sum += line.draw(random);
    }
    return sum;
  }

  /** The combined standard uncertainty: the root of the sum of squares of the contributions. */
  public double combined() {
    return rootSumOfSquares(line -> true);
  }

  /** The part that is independent from run to run, and so shows up in their scatter. */
  public double independent() {
    return rootSumOfSquares(line -> line.sharedBy().isEmpty());
  }

  /** The part that is shared by the readings of instruments, and so does not average out. */
  public double shared() {
    return rootSumOfSquares(line -> line.sharedBy().isPresent());
  }

  /**
   * The effective degrees of freedom by the Welch–Satterthwaite formula, JCGM 100:2008, equation
   * (G.2b); infinite where all lines are well known.
   */
  public double effectiveDegreesOfFreedom() {
    double combined = combined();
    double sum = 0;
    for (BudgetLine line : lines) {
      sum += line.variance() * line.variance() / line.degreesOfFreedom();
    }
    return sum == 0 ? Double.POSITIVE_INFINITY : Math.pow(combined, 4) / sum;
  }

  /** A known figure with this budget as its uncertainty. */
  public Figure around(double value, Dimension dimension) {
    return new Figure.Known(
        new Measured(value, combined(), effectiveDegreesOfFreedom(), dimension), this);
  }

  private double rootSumOfSquares(Predicate<BudgetLine> which) {
    return Math.sqrt(lines.stream().filter(which).mapToDouble(BudgetLine::variance).sum());
  }
}
