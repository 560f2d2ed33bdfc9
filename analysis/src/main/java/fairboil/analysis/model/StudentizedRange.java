package fairboil.analysis.model;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The studentised range: the range of {@code k} independent normal means over an estimate of their
 * standard deviation (Tukey; Hochberg and Tamhane, Multiple Comparison Procedures, 1987, appendix
 * 3.1). Immutable: the distribution of the range itself is tabled once, when this is made.
 */
public final class StudentizedRange {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** The range of means is tabled in steps of this, up to {@link #END}. */
  private static final double STEP = 1.0 / 32;

  private static final double END = 17;

  private final int means;
  private final double[] probabilities;
  private final double[] densities;

  /**
   * The distribution for a number of means.
   *
   * @param means how many means, at least 2
   */
  public StudentizedRange(int means) {
    if (means < 2) {
      throw new IllegalArgumentException("no range of " + means + " means");
    }
    this.means = means;
    int points = (int) Math.round(END / STEP) + 1;
    this.probabilities = new double[points];
    this.densities = new double[points];
    if (means == 2) {
      tableOfTwo();
      return;
    }
    double[] z = Quadrature.normalNodes();
    double[] weights = Quadrature.normalWeights();
    double[] below = new double[z.length];
    for (int i = 0; i < z.length; i++) {
      below[i] = NORMAL.cumulativeProbability(z[i]);
    }
    for (int point = 0; point < points; point++) {
      table(point, z, weights, below);
    }
  }

  /** The difference of two is normal. */
  private void tableOfTwo() {
    double root = Math.sqrt(2);
    for (int point = 0; point < probabilities.length; point++) {
      double w = point * STEP;
      probabilities[point] = 2 * NORMAL.cumulativeProbability(w / root) - 1;
      densities[point] = root * NORMAL.density(w / root);
    }
  }

  private void table(int point, double[] z, double[] weights, double[] below) {
    double w = point * STEP;
    double probability = 0;
    double density = 0;
    for (int i = 0; i < z.length; i++) {
      double between = below[i] - NORMAL.cumulativeProbability(z[i] - w);
      double power = weights[i] * Math.pow(between, means - 2);
      probability += power * between;
      density += power * NORMAL.density(z[i] - w);
    }
    probabilities[point] = means * probability;
    densities[point] = means * (means - 1.0) * density;
  }

  /** How many means. */
  public int means() {
    return means;
  }

  /**
   * The probability of a studentised range up to {@code q}; good to about 1e-8.
   *
   * @param degreesOfFreedom of the estimate of the standard deviation, at least 1; infinite if that
   *     is known
   */
  public double cumulativeProbability(double q, double degreesOfFreedom) {
    if (!(q > 0)) {
      return 0;
    }
    double probability = Quadrature.overScale(degreesOfFreedom, s -> ofRange(q * s));
    return Math.max(0, Math.min(1, probability));
  }

  /** The studentised range that is not exceeded with the given probability, between 0 and 1. */
  public double inverseCumulativeProbability(double probability, double degreesOfFreedom) {
    return Root.ofIncreasing(q -> cumulativeProbability(q, degreesOfFreedom), probability, 0, 8);
  }

  /** The probability of a range up to {@code w}, by cubic Hermite interpolation. */
  private double ofRange(double w) {
    int point = (int) (w / STEP);
    if (point >= probabilities.length - 1) {
      return 1;
    }
    double t = w / STEP - point;
    double rest = 1 - t;
    return rest * rest * (1 + 2 * t) * probabilities[point]
        + t * t * (3 - 2 * t) * probabilities[point + 1]
        + STEP * t * rest * (rest * densities[point] - t * densities[point + 1]);
  }
}
