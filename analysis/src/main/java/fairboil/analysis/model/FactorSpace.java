package fairboil.analysis.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The space spanned by the indicator columns of one or more factors, as an orthonormal basis: what
 * a model with those factors can fit. Immutable.
 */
public final class FactorSpace {

  private static final double DEPENDENT = 1e-9;

  private final List<double[]> basis;

  private FactorSpace(List<double[]> basis) {
    this.basis = basis;
  }

  /**
   * The space of some factors.
   *
   * @param factors for each factor the level of every value, from 0; all of one length
   */
  public static FactorSpace of(int[]... factors) {
    List<double[]> basis = new ArrayList<>();
    for (int factor = 0; factor < factors.length; factor++) {
      for (double[] column : indicators(factors[factor])) {
        if (factor > 0) {
          project(column, basis);
          project(column, basis); // twice is enough (Kahan and Parlett)
        }
        double length = Math.sqrt(dot(column, column));
        if (length > DEPENDENT * Math.sqrt(column.length)) {
          scale(column, 1 / length);
          basis.add(column);
        }
      }
    }
    return new FactorSpace(basis);
  }

  private static List<double[]> indicators(int[] levels) {
    Map<Integer, double[]> columns = new HashMap<>();
    List<double[]> inOrder = new ArrayList<>();
    for (int i = 0; i < levels.length; i++) {
      double[] column = columns.get(levels[i]);
      if (column == null) {
        column = new double[levels.length];
        columns.put(levels[i], column);
        inOrder.add(column);
      }
      column[i] = 1;
    }
    return inOrder;
  }

  private static void project(double[] column, List<double[]> basis) {
    for (double[] direction : basis) {
      double along = dot(column, direction);
      for (int i = 0; i < column.length; i++) {
        column[i] -= along * direction[i];
      }
    }
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  private static void scale(double[] values, double factor) {
    for (int i = 0; i < values.length; i++) {
      values[i] *= factor;
    }
  }

  /** How many independent means the model has. */
  public int rank() {
    return basis.size();
  }

  /** The sum of squares of the fitted values. */
  public double squares(double[] values) {
    return basis.stream().mapToDouble(direction -> dot(direction, values)).map(d -> d * d).sum();
  }

  /**
   * How much of the variance of a random factor is in the expectation of {@link #squares}: the
   * trace of Z′PZ.
   *
   * @param factor the level of every value
   */
  public double weight(int[] factor) {
    double trace = 0;
    for (double[] direction : basis) {
      Map<Integer, Double> sums = new HashMap<>();
      for (int i = 0; i < factor.length; i++) {
        sums.merge(factor[i], direction[i], Double::sum);
      }
      trace += sums.values().stream().mapToDouble(sum -> sum * sum).sum();
    }
    return trace;
  }
}
