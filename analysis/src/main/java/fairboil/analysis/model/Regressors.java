package fairboil.analysis.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The columns that a response is regressed on. Immutable: {@link #and} gives a new one.
 *
 * <p>Start with {@link #intercept}, or with {@link #none} for a model through the origin, and add
 * columns: {@code Regressors.intercept(8).and("hole error", errors)}.
 */
public final class Regressors {

  /** The name of the column of ones. */
  public static final String INTERCEPT = "intercept";

  private final int rows;
  private final List<String> names;
  private final List<double[]> columns;

  private Regressors(int rows, List<String> names, List<double[]> columns) {
    this.rows = rows;
    this.names = List.copyOf(names);
    this.columns = List.copyOf(columns);
  }

  /** No columns yet: a model through the origin. */
  public static Regressors none(int rows) {
    return new Regressors(rows, List.of(), List.of());
  }

  /** A column of ones. */
  public static Regressors intercept(int rows) {
    double[] ones = new double[rows];
    Arrays.fill(ones, 1);
    return none(rows).and(INTERCEPT, ones);
  }

  /** A straight line in one variable. */
  public static Regressors line(String name, double[] values) {
    return intercept(values.length).and(name, values);
  }

  /**
   * These columns and one more.
   *
   * @param name its name
   * @param values one finite value a row; copied
   */
  public Regressors and(String name, double[] values) {
    if (values.length != rows) {
      throw new IllegalArgumentException(
          name + ": " + values.length + " values for " + rows + " rows");
    }
    if (!Arrays.stream(values).allMatch(Double::isFinite)) {
      throw new IllegalArgumentException(name + ": not all values are finite");
    }
    List<String> moreNames = new ArrayList<>(names);
    moreNames.add(name);
    List<double[]> moreColumns = new ArrayList<>(columns);
    moreColumns.add(values.clone());
    return new Regressors(rows, moreNames, moreColumns);
  }

  /** The same columns without one row. */
  public Regressors withoutRow(int left) {
    Regressors rest = none(rows - 1);
    for (int j = 0; j < columns.size(); j++) {
      double[] column = columns.get(j);
      rest =
          rest.and(
              names.get(j),
              IntStream.range(0, rows)
                  .filter(i -> i != left)
                  .mapToDouble(i -> column[i])
                  .toArray());
    }
    return rest;
  }

  /** How many rows there are. */
  public int rows() {
    return rows;
  }

  /** The names of the columns, in order; unmodifiable. */
  public List<String> names() {
    return names;
  }

  /** How many columns there are. */
  public int size() {
    return columns.size();
  }

  /**
   * The place of a column.
   *
   * @throws IllegalArgumentException if there is no such column
   */
  public int indexOf(String name) {
    int index = names.indexOf(name);
    if (index < 0) {
      throw new IllegalArgumentException("no column " + name + " among " + names);
    }
    return index;
  }

  /** One row; a copy. */
  public double[] row(int index) {
    return columns.stream().mapToDouble(column -> column[index]).toArray();
  }

  double[] column(int index) {
    return columns.get(index);
  }

  boolean hasIntercept() {
    return names.contains(INTERCEPT);
  }

  /** The rows, each times the root of its weight, as an array of rows of their own. */
  double[][] weighted(double[] weights) {
    double[][] table = new double[rows][];
    for (int i = 0; i < rows; i++) {
      double root = Math.sqrt(weights[i]);
      table[i] = Arrays.stream(row(i)).map(value -> root * value).toArray();
    }
    return table;
  }
}
