package fairboil.analysis.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.stream.DoubleStream;

/**
 * How often a slope as steep would come about if the x of a stratum had nothing to do with its y:
 * by dealing them out anew within strata (Fisher, The Design of Experiments, 1935).
 *
 * @param pValue the share of deals with a slope as steep, the one at hand among them
 * @param floor the smallest share that any deal of these points gives, the share of the steepest:
 *     where all were tried 1 in all deals, for it is as steep as itself; 2 where another is as
 *     steep the other way, as where x or y have equal steps; more where values are equal. Where
 *     deals were sampled 1 in them
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
      double[] steepness = parts.allDeals();
      double steepest = Arrays.stream(steepness).max().orElseThrow();
      return new SlopePermutation(
          share(steepness, limit),
          share(steepness, steepest - ROUNDING * parts.scale()),
          Method.ALL);
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

  private static double share(double[] steepness, double limit) {
    long asSteep = Arrays.stream(steepness).filter(each -> each >= limit).count();
    return (double) asSteep / steepness.length;
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

    /** The steepness of every deal. */
    double[] allDeals() {
      DoubleStream.Builder steepness = DoubleStream.builder();
      deal(0, 0, 0, steepness);
      return steepness.build().toArray();
    }

    /** Deals out the rest of a stratum, then the strata after it. */
    private void deal(int part, int from, double sum, DoubleStream.Builder steepness) {
      if (part == xs.size()) {
        steepness.add(Math.abs(sum));
        return;
      }
      double[] x = xs.get(part);
      if (from == x.length) {
        deal(part + 1, 0, sum, steepness);
        return;
      }
      for (int i = from; i < x.length; i++) {
        swap(x, from, i);
        deal(part, from + 1, sum + x[from] * ys.get(part)[from], steepness);
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
