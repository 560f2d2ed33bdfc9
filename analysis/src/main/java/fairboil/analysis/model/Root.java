package fairboil.analysis.model;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where an increasing function crosses a level. */
final class Root {

  private static final int MOST_STEPS = 200;

  private Root() {}

  /**
   * The value at which an increasing function reaches a level, above {@code low}.
   *
   * @param first a first guess of the upper end, above {@code low}; doubled until it is high enough
   */
  static double ofIncreasing(DoubleUnaryOperator f, double level, double low, double first) {
    double high = first;
    for (int i = 0; f.applyAsDouble(high) < level && i < MOST_STEPS; i++) {
      high = low + 2 * (high - low);
    }
    return new BracketingNthOrderBrentSolver(1e-11, 1e-11, 1e-14, 5)
        .solve(MOST_STEPS, x -> f.applyAsDouble(x) - level, low, high);
  }
}
