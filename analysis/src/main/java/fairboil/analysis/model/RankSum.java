package fairboil.analysis.model;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.ranking.NaturalRanking;

/**
 * The rank-sum test of two groups (Wilcoxon, Biometrics Bulletin 1, 1945; Mann and Whitney, 1947),
 * ties by midranks. Infinite values are allowed: a run that did not boil took longer than any that
 * did.
 *
 * @param superiority the share of pairs in which the first is larger, ties counted half
 * @param pValue two-sided
 * @param method how the p-value was found
 */
public record RankSum(double superiority, double pValue, Method method) {

  /** How a p-value was found. */
  public enum Method {
    /** By all ways of dealing the values out. */
    EXACT,
    /** By the normal approximation with correction for ties and continuity. */
    APPROXIMATE
  }

  /** Most ways of dealing out that are counted one by one. */
  private static final double MOST_WAYS = 300_000;

  /** Rank sums are multiples of a half; this is less. */
  private static final double TIE = 0.1;

  /** Tests two groups of at least one value each. */
  public static RankSum of(double[] first, double[] second) {
    double[] all = DoubleStream.concat(Arrays.stream(first), Arrays.stream(second)).toArray();
    double[] ranks = new NaturalRanking().apply(all);
    double sum = Arrays.stream(ranks, 0, first.length).sum();
    double expected = first.length * (all.length + 1) / 2.0;
    double off = Math.abs(sum - expected);
    double superiority = superiority(first, second);
    return ways(all.length, first.length) <= MOST_WAYS
        ? new RankSum(superiority, exact(ranks, first.length, expected, off), Method.EXACT)
        : new RankSum(superiority, approximate(ranks, first.length, off), Method.APPROXIMATE);
  }

  /** The share of pairs in which the first is larger, ties counted half. */
  public static double superiority(double[] first, double[] second) {
    double larger = 0;
    for (double one : first) {
      for (double other : second) {
        larger += one > other ? 1 : one == other ? 0.5 : 0;
      }
    }
    return larger / first.length / second.length;
  }

  /**
   * The sign test of pairs (Arbuthnot, 1710): how often the first of a pair is larger, pairs alike
   * left out; exact.
   *
   * @param larger in how many pairs the first is larger
   * @param smaller in how many it is smaller
   */
  public static RankSum ofSigns(int larger, int smaller) {
    int pairs = larger + smaller;
    if (pairs == 0) {
      return new RankSum(0.5, 1, Method.EXACT);
    }
    double tail =
        BinomialDistribution.of(pairs, 0.5).cumulativeProbability(Math.min(larger, smaller));
    return new RankSum((double) larger / pairs, Math.min(1, 2 * tail), Method.EXACT);
  }

  /** The p-value by the normal approximation, whatever the sizes. */
  static double approximatePValue(double[] first, double[] second) {
    double[] all = DoubleStream.concat(Arrays.stream(first), Arrays.stream(second)).toArray();
    double[] ranks = new NaturalRanking().apply(all);
    double sum = Arrays.stream(ranks, 0, first.length).sum();
    return approximate(ranks, first.length, Math.abs(sum - first.length * (all.length + 1) / 2.0));
  }

  private static double ways(int of, int choose) {
    double ways = 1;
    for (int i = 0; i < Math.min(choose, of - choose); i++) {
      ways = ways * (of - i) / (i + 1);
    }
    return ways;
  }

  private static double exact(double[] ranks, int choose, double expected, double off) {
    long[] counts = new long[2];
    deal(ranks, 0, choose, 0, expected, off - TIE, counts);
    return (double) counts[0] / counts[1];
  }

  /** Counts the ways of choosing the rest in which the sum is as far off, and all. */
  private static void deal(
      double[] ranks, int from, int rest, double sum, double expected, double off, long[] counts) {
    if (rest == 0) {
      counts[1]++;
      if (Math.abs(sum - expected) >= off) {
        counts[0]++;
      }
      return;
    }
    for (int i = from; i <= ranks.length - rest; i++) {
      deal(ranks, i + 1, rest - 1, sum + ranks[i], expected, off, counts);
    }
  }

  private static double approximate(double[] ranks, int choose, double off) {
    int n = ranks.length;
    double middle = (n + 1) / 2.0;
    double squares = Arrays.stream(ranks).map(rank -> (rank - middle) * (rank - middle)).sum();
    double variance = squares * choose * (n - choose) / n / (n - 1);
    if (variance == 0) {
      return 1;
    }
    double z = Math.max(0, off - 0.5) / Math.sqrt(variance);
    return Math.min(1, 2 * NormalDistribution.of(0, 1).survivalProbability(z));
  }
}
