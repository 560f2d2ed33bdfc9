package fairboil.analysis.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * How often a slope as steep would come about if the x of a stratum had nothing to do with its y:
 * by dealing them out anew within strata (Fisher, The Design of Experiments, 1935).
 *
 * @param pValue the share of deals with a slope as steep, the one at hand among them
 * @param floor the smallest share that this many points can give
 * @param method whether all deals were tried
 */
public record SlopePermutation(double pValue, double floor, Method method) {

  /** Whether all deals were tried. */
  public enum Method {
    /** All were. */
    ALL,
    /** A random sample of them. */
    SAMPLE
  }

  private static final int MOST_DEALS = 50_000;

  private static final int SAMPLED = 19_999;

  /** As steep as the one at hand, but for rounding. */
  private static final double ROUNDING = 1e-9;

  /**
   * Tests the slope of y on x within strata.
   *
   * @param x one value a point
   * @param y one value a point
   * @param strata the stratum of each point
   * @param random used where there are too many deals to try them all
   */
  public static SlopePermutation of(
      double[] x, double[] y, List<String> strata, RandomGenerator random) {
    Strata parts = Strata.of(x, y, strata);
    double limit = Math.abs(parts.product()) - ROUNDING * parts.scale();
    double deals = parts.deals();
    if (deals <= MOST_DEALS) {
      long[] counts = new long[2];
      parts.deal(0, 0, 0, limit, counts);
      return new SlopePermutation(
          (double) counts[0] / counts[1], Math.min(1, 2 / deals), Method.ALL);
    }
    int asSteep = 1;
    for (int i = 0; i < SAMPLED; i++) {
      if (Math.abs(parts.shuffled(random)) >= limit) {
        asSteep++;
      }
    }
    return new SlopePermutation(
        (double) asSteep / (SAMPLED + 1), 1.0 / (SAMPLED + 1), Method.SAMPLE);
  }

  /** The points of each stratum, both coordinates less their means. */
  private record Strata(List<double[]> xs, List<double[]> ys) {

    static Strata of(double[] x, double[] y, List<String> strata) {
      Map<String, List<Integer>> rows = new LinkedHashMap<>();
      for (int i = 0; i < x.length; i++) {
        rows.computeIfAbsent(strata.get(i), key -> new ArrayList<>()).add(i);
      }
      List<double[]> xs = new ArrayList<>();
      List<double[]> ys = new ArrayList<>();
      for (List<Integer> own : rows.values()) {
        xs.add(centred(x, own));
        ys.add(centred(y, own));
      }
      return new Strata(xs, ys);
    }

    private static double[] centred(double[] values, List<Integer> rows) {
      double mean = rows.stream().mapToDouble(row -> values[row]).average().orElseThrow();
      return rows.stream().mapToDouble(row -> values[row] - mean).toArray();
    }

    /** Slopes are this product over what no deal changes. */
    double product() {
      double sum = 0;
      for (int part = 0; part < xs.size(); part++) {
        for (int i = 0; i < xs.get(part).length; i++) {
          sum += xs.get(part)[i] * ys.get(part)[i];
        }
      }
      return sum;
    }

    double scale() {
      return Math.sqrt(squares(xs) * squares(ys));
    }

    private static double squares(List<double[]> parts) {
      return parts.stream().flatMapToDouble(Arrays::stream).map(value -> value * value).sum();
    }

    double deals() {
      double deals = 1;
      for (double[] part : xs) {
        for (int i = 2; i <= part.length; i++) {
          deals *= i;
        }
      }
      return deals;
    }

    /** Deals out the rest of a stratum, then the strata after it; counts steep ones, and all. */
    void deal(int part, int from, double sum, double limit, long[] counts) {
      if (part == xs.size()) {
        counts[1]++;
        counts[0] += Math.abs(sum) >= limit ? 1 : 0;
        return;
      }
      double[] x = xs.get(part);
      if (from == x.length) {
        deal(part + 1, 0, sum, limit, counts);
        return;
      }
      for (int i = from; i < x.length; i++) {
        swap(x, from, i);
        deal(part, from + 1, sum + x[from] * ys.get(part)[from], limit, counts);
        swap(x, from, i);
      }
    }

    double shuffled(RandomGenerator random) {
      for (double[] x : xs) {
        for (int i = x.length - 1; i > 0; i--) {
          swap(x, i, random.nextInt(i + 1));
        }
      }
      return product();
    }

    private static void swap(double[] values, int i, int j) {
      double kept = values[i];
      values[i] = values[j];
      values[j] = kept;
    }
  }
}
