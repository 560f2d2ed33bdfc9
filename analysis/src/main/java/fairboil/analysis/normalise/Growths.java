package fairboil.analysis.normalise;

import java.util.List;

/**
 * How the fires of a study grow, for runs of which there is no log of the heating.
 *
 * @param mean mean growth, 1/s
 * @param uncertainty standard uncertainty for one more fire, 1/s
 * @param runs how many fires were seen; 0 for none
 */
record Growths(double mean, double uncertainty, int runs) {

  /** Half-width of the growth of a fire nobody has seen, 1/s: ±30 % in 10 minutes, a judgement. */
  private static final double UNSEEN = 0.3 / 600;

  private static final int FEWEST = 3;

  static Growths of(List<Double> seen) {
    if (seen.size() < FEWEST) {
      return new Growths(0, UNSEEN / Math.sqrt(3), 0);
    }
    double mean = seen.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double squares = seen.stream().mapToDouble(each -> Math.pow(each - mean, 2)).sum();
    double scatter = Math.sqrt(squares / (seen.size() - 1));
    return new Growths(mean, scatter * Math.sqrt(1 + 1.0 / seen.size()), seen.size());
  }

  double degreesOfFreedom() {
    return runs == 0 ? Double.POSITIVE_INFINITY : runs - 1.0;
  }
}
