package fairboil.analysis.model;

import fairboil.analysis.figure.Deviations;
import fairboil.analysis.figure.Interval;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * Scatter between and within groups of a one-way random model, groups of any sizes.
 *
 * <p>The mean square between is that of unweighted means, {@code n' Σ(m − m̄)²/(k − 1)} with the
 * harmonic mean size {@code n'} (Thomas and Hultquist, Annals of Statistics 6, 1978); for equal
 * sizes it is the usual one.
 *
 * @param groups how many groups, at least 2
 * @param size the harmonic mean of their sizes
 * @param between the mean square between groups
 * @param within the mean square within groups
 * @param degreesOfFreedomWithin of {@code within}, at least 1
 */
public record VarianceComponents(
    int groups, double size, double between, double within, int degreesOfFreedomWithin) {

  /** The components, or empty with fewer than two groups, or none with two values. */
  public static Optional<VarianceComponents> of(List<double[]> groups) {
    return within(List.of(groups));
  }

  /**
   * The components of groups that belong to families, which may differ in level: scatter between
   * groups is that within families, pooled. The number of groups of the result is one more than its
   * degrees of freedom between groups.
   *
   * @param families the groups of each family
   * @return the components, or empty if no family has two groups, or no group two values
   */
  public static Optional<VarianceComponents> within(List<List<double[]>> families) {
    List<double[]> groups = families.stream().flatMap(List::stream).toList();
    double squares =
        families.stream()
            .filter(family -> !family.isEmpty())
            .mapToDouble(
                family ->
                    Deviations.squares(
                        family.stream().mapToDouble(VarianceComponents::mean).toArray()))
            .sum();
    int between = families.stream().mapToInt(family -> Math.max(0, family.size() - 1)).sum();
    return of(groups, squares, between);
  }

  /**
   * The components where what is expected of the means is known but for so many numbers: means
   * about a line, for instance.
   *
   * @param groups the values of each group
   * @param squaresOfMeans the sum of squared deviations of the means of groups from what is
   *     expected
   * @param degreesOfFreedom of that sum
   * @return the components, or empty without degrees of freedom between or within groups
   */
  public static Optional<VarianceComponents> of(
      List<double[]> groups, double squaresOfMeans, int degreesOfFreedom) {
    int ofValues = groups.stream().mapToInt(group -> group.length - 1).sum();
    if (degreesOfFreedom < 1 || ofValues < 1) {
      return Optional.empty();
    }
    double size = groups.size() / groups.stream().mapToDouble(group -> 1.0 / group.length).sum();
    double within = groups.stream().mapToDouble(Deviations::squares).sum();
    return Optional.of(
        new VarianceComponents(
            degreesOfFreedom + 1,
            size,
            size * squaresOfMeans / degreesOfFreedom,
            within / ofValues,
            ofValues));
  }

  /** The standard deviation within groups. */
  public double sdWithin() {
    return Math.sqrt(within);
  }

  /** The standard deviation between groups beyond that within; 0 where none is seen. */
  public double sdBetween() {
    return Math.sqrt(Math.max(0, (between - within) / size));
  }

  /** The interval of the standard deviation within groups. */
  public Interval intervalWithin(double confidence) {
    return intervalOfSd(within * degreesOfFreedomWithin, degreesOfFreedomWithin, confidence);
  }

  /**
   * The interval of a standard deviation by χ².
   *
   * @param squares the sum of squared deviations
   * @param degreesOfFreedom of it, at least 1
   * @param confidence between 0 and 1
   */
  public static Interval intervalOfSd(double squares, int degreesOfFreedom, double confidence) {
    double tail = (1 - confidence) / 2;
    ChiSquaredDistribution chiSquared = ChiSquaredDistribution.of(degreesOfFreedom);
    return new Interval(
        Math.sqrt(squares / chiSquared.inverseSurvivalProbability(tail)),
        Math.sqrt(squares / chiSquared.inverseCumulativeProbability(tail)));
  }

  /**
   * The modified large-sample interval of the standard deviation between groups (Ting, Burdick,
   * Graybill, Jeyaratnam and Lu, Journal of Statistical Computation and Simulation 35, 1990), which
   * for one mean square is that of Graybill and Wang (1980). Its ends are at least 0.
   */
  public Interval intervalBetween(double confidence) {
    double tail = (1 - confidence) / 2;
    double n1 = groups - 1.0;
    double n2 = degreesOfFreedomWithin;
    double g1 = 1 - n1 / upperChiSquared(n1, tail);
    double g2 = 1 - n2 / upperChiSquared(n2, tail);
    double h1 = n1 / upperChiSquared(n1, 1 - tail) - 1;
    double h2 = n2 / upperChiSquared(n2, 1 - tail) - 1;
    double upperF = FDistribution.of(n1, n2).inverseSurvivalProbability(tail);
    double lowerF = FDistribution.of(n1, n2).inverseCumulativeProbability(tail);
    double g12 = (square(upperF - 1) - square(g1 * upperF) - square(h2)) / upperF;
    double h12 = (square(1 - lowerF) - square(h1 * lowerF) - square(g2)) / lowerF;
    double down = square(g1 * between) + square(h2 * within) + g12 * between * within;
    double up = square(h1 * between) + square(g2 * within) + h12 * between * within;
    double difference = between - within;
    // for small mean squares the cross terms may outweigh the squares, by rounding or in truth
    return new Interval(
        sd(difference - Math.sqrt(Math.max(0, down))), sd(difference + Math.sqrt(Math.max(0, up))));
  }

  /**
   * The standard deviation of one value of a group taken at random: between and within together.
   */
  public double sdTotal() {
    return Math.sqrt(square(sdBetween()) + within);
  }

  /**
   * The interval of {@link #sdTotal}: Graybill and Wang (Journal of the American Statistical
   * Association 75, 1980), of the sum of the two mean squares that make it.
   */
  public Interval intervalTotal(double confidence) {
    double tail = (1 - confidence) / 2;
    double one = between / size;
    double two = Math.max(0, 1 - 1 / size) * within;
    double down =
        Math.hypot(lower(groups - 1.0, tail) * one, lower(degreesOfFreedomWithin, tail) * two);
    double up =
        Math.hypot(upper(groups - 1.0, tail) * one, upper(degreesOfFreedomWithin, tail) * two);
    return new Interval(
        Math.sqrt(Math.max(0, one + two - down)), Math.max(sdTotal(), Math.sqrt(one + two + up)));
  }

  /** Degrees of freedom of {@link #sdTotal} (Satterthwaite, Biometrics Bulletin 2, 1946). */
  public double degreesOfFreedomTotal() {
    double one = between / size;
    double two = Math.max(0, 1 - 1 / size) * within;
    double sum = square(one) / (groups - 1) + square(two) / degreesOfFreedomWithin;
    return sum > 0 ? square(one + two) / sum : groups - 1.0;
  }

  private static double lower(double degreesOfFreedom, double tail) {
    return 1 - degreesOfFreedom / upperChiSquared(degreesOfFreedom, tail);
  }

  private static double upper(double degreesOfFreedom, double tail) {
    return degreesOfFreedom / upperChiSquared(degreesOfFreedom, 1 - tail) - 1;
  }

  private double sd(double differenceOfMeanSquares) {
    return Math.sqrt(Math.max(0, differenceOfMeanSquares / size));
  }

  private static double upperChiSquared(double degreesOfFreedom, double tail) {
    return ChiSquaredDistribution.of(degreesOfFreedom).inverseSurvivalProbability(tail);
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  private static double square(double value) {
    return value * value;
  }
}
