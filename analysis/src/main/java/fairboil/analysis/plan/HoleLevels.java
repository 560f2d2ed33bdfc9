package fairboil.analysis.plan;

import java.util.stream.IntStream;

/**
 * The hole errors that builds are to have: as many as possible at each of three levels, so that a
 * bend of the line would show. RMS hole errors, m.
 *
 * @param least the least: drilled as truly as can be, at least 0
 * @param largest the largest, above {@code least}
 */
public record HoleLevels(double least, double largest) {

  /** How many levels there are. */
  public static final int COUNT = 3;

  /** Checks the order. */
  public HoleLevels {
    if (!(least >= 0) || !(largest > least) || Double.isInfinite(largest)) {
      throw new IllegalArgumentException("no levels: " + least + " to " + largest);
    }
  }

  /** The hole error at a level, from 0. */
  public double at(int level) {
    return least + (largest - least) * level / (COUNT - 1);
  }

  /**
   * The level of each of some builds: the ends first, so that they are never rarer than the middle.
   */
  static int[] shared(int builds) {
    return IntStream.range(0, builds).map(build -> new int[] {0, 2, 1}[build % COUNT]).toArray();
  }

  /** The sum of squared deviations of the hole errors of so many builds from their mean, m². */
  double squares(int builds) {
    double[] errors = IntStream.of(shared(builds)).mapToDouble(this::at).toArray();
    double mean = IntStream.range(0, builds).mapToDouble(i -> errors[i]).sum() / builds;
    return IntStream.range(0, builds)
        .mapToDouble(i -> (errors[i] - mean) * (errors[i] - mean))
        .sum();
  }
}
