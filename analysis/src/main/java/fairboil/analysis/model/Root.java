package fairboil.analysis.model;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where an increasing function crosses a level. */
final class Root {

  private static final int MOST_STEPS = 1000;

  private static final int MOST_DOUBLINGS = 200;

  private Root() {}

  /**
   * The value at which an increasing function reaches a level; an end of what was searched where
   * the function never does.
   *
   * @param low the lower end; moved down where it is too high
   * @param first a first guess of the upper end, above {@code low}; moved up until it is high
   *     enough
   */
  static double ofIncreasing(DoubleUnaryOperator f, double level, double low, double first) {
    double bottom = low;
    double top = first;
    for (int i = 0; f.applyAsDouble(top) < level && i < MOST_DOUBLINGS; i++) {
      top = bottom + 2 * (top - bottom);
    }
    for (int i = 0; f.applyAsDouble(bottom) > level && i < MOST_DOUBLINGS; i++) {
      bottom = top - 2 * (top - bottom);
    }
    double below = f.applyAsDouble(bottom) - level;
    double above = f.applyAsDouble(top) - level;
    if (below >= 0 || !(above > 0)) {
      return below >= 0 ? bottom : top;
    }
    return new BracketingNthOrderBrentSolver(1e-11, 1e-11, 1e-14, 5)
        .solve(MOST_STEPS, x -> f.applyAsDouble(x) - level, bottom, top);
  }
}
