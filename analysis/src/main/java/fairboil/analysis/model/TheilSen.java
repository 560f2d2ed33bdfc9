package fairboil.analysis.model;

import fairboil.analysis.figure.Interval;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The median of the slopes between all pairs of points (Theil, 1950; Sen, Journal of the American
 * Statistical Association 63, 1968): a line that one odd point cannot turn.
 *
 * @param slope the median slope
 * @param interval the interval between two of the slopes, chosen by Kendall's statistic; empty if
 *     too few points allow none
 * @param confidence the confidence that the interval attains, at least that asked for; 0 if there
 *     is none
 */
public record TheilSen(double slope, Optional<Interval> interval, double confidence) {

  /** Up to so many points the distribution of inversions is exact. */
  private static final int MOST_EXACT = 60;

  /**
   * Fits a line.
   *
   * @param x at least two different values
   * @param y as many
   * @param asked the confidence asked for
   * @return the fit, or empty if all x are equal
   */
  public static Optional<TheilSen> of(double[] x, double[] y, double asked) {
    double[] slopes =
        IntStream.range(0, x.length)
            .boxed()
            .flatMapToDouble(
                i ->
                    IntStream.range(0, i)
                        .filter(j -> x[i] != x[j])
                        .mapToDouble(j -> (y[i] - y[j]) / (x[i] - x[j])))
            .sorted()
            .toArray();
    return slopes.length == 0 ? Optional.empty() : Optional.of(of(slopes, x.length, asked));
  }

  private static TheilSen of(double[] slopes, int points, double asked) {
    double median = (slopes[(slopes.length - 1) / 2] + slopes[slopes.length / 2]) / 2;
    double[] atMost = inversions(points);
    int pairs = points * (points - 1) / 2;
    // leave out k slopes at either end: P(inversions < k) each
    int leftOut = 0;
    while (leftOut + 1 <= pairs / 2 && 1 - 2 * atMost[leftOut] >= asked) {
      leftOut++;
    }
    boolean possible = leftOut > 0 && slopes.length == pairs;
    return possible
        ? new TheilSen(
            median,
            Optional.of(new Interval(slopes[leftOut - 1], slopes[slopes.length - leftOut])),
            1 - 2 * atMost[leftOut - 1])
        : new TheilSen(median, Optional.empty(), 0);
  }

  /** The probability of at most so many inversions in a random order of the points. */
  private static double[] inversions(int points) {
    return points > MOST_EXACT ? byNormal(points) : exactly(points);
  }

  private static double[] exactly(int points) {
    int pairs = points * (points - 1) / 2;
    double[] counts = new double[pairs + 1];
    counts[0] = 1;
    for (int m = 2; m <= points; m++) {
      double[] next = new double[pairs + 1];
      double window = 0;
      for (int count = 0; count <= pairs; count++) {
        window += counts[count] - (count >= m ? counts[count - m] : 0);
        next[count] = window / m;
      }
      counts = next;
    }
    for (int count = 1; count <= pairs; count++) {
      counts[count] += counts[count - 1];
    }
    return counts;
  }

  private static double[] byNormal(int points) {
    int pairs = points * (points - 1) / 2;
    double n = points;
    NormalDistribution normal =
        NormalDistribution.of(pairs / 2.0, Math.sqrt(n * (n - 1) * (2 * n + 5) / 72));
    return IntStream.rangeClosed(0, pairs / 2)
        .mapToDouble(count -> normal.cumulativeProbability(count + 0.5))
        .toArray();
  }
}
