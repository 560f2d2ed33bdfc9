package fairboil.analysis.model;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.gamma.LogGamma;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;

/** Integrals that distributions of ranges and bounds are made of, by Gauss–Legendre rules. */
final class Quadrature {

  /** Beyond this many standard deviations a normal variable counts for nothing. */
  static final double NORMAL_REACH = 8.5;

  /** Below this, much happens near 0, where the nodes then are crowded. */
  private static final double FEW = 6;

  /** Beyond so many of its own standard deviations, about, {@code s} counts for nothing. */
  private static final double SCALE_REACH = 9;

  /** From so many degrees of freedom on a standard deviation counts as known. */
  static final double KNOWN_WELL = 1e7;

  private static final int NORMAL_PANELS = 8;

  private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);

  private static final GaussIntegrator RULE =
      new GaussIntegrator(new LegendreRuleFactory().getRule(16));

  private Quadrature() {}

  /** The integral of a smooth function over [from, to], cut into panels. */
  static double integrate(DoubleUnaryOperator f, double from, double to, int panels) {
    double half = (to - from) / panels / 2;
    double sum = 0;
    for (int panel = 0; panel < panels; panel++) {
      double middle = from + (2 * panel + 1) * half;
      for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
        sum += RULE.getWeight(i) * f.applyAsDouble(middle + half * RULE.getPoint(i));
      }
    }
    return sum * half;
  }

  /** The mean of a function of a standard normal variable. */
  static double overNormal(DoubleUnaryOperator f) {
    return integrate(
        z -> normalDensity(z) * f.applyAsDouble(z), -NORMAL_REACH, NORMAL_REACH, NORMAL_PANELS);
  }

  private static double normalDensity(double z) {
    return Math.exp(-z * z / 2) / ROOT_OF_TWO_PI;
  }

  /** The nodes at which {@link #overNormal} looks. */
  static double[] normalNodes() {
    int points = RULE.getNumberOfPoints();
    double half = NORMAL_REACH / NORMAL_PANELS;
    double[] nodes = new double[NORMAL_PANELS * points];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = -NORMAL_REACH + (2 * (i / points) + 1 + RULE.getPoint(i % points)) * half;
    }
    return nodes;
  }

  /** The weight of each of them. */
  static double[] normalWeights() {
    int points = RULE.getNumberOfPoints();
    double[] weights = normalNodes();
    for (int i = 0; i < weights.length; i++) {
      weights[i] =
          RULE.getWeight(i % points) * NORMAL_REACH / NORMAL_PANELS * normalDensity(weights[i]);
    }
    return weights;
  }

  /**
   * The mean of a function of {@code s = √(χ²/ν)}, the ratio of a sample standard deviation to the
   * true one; of 1 for infinite degrees of freedom.
   */
  static double overScale(double degreesOfFreedom, DoubleUnaryOperator f) {
    return overScale(degreesOfFreedom, 0, Double.POSITIVE_INFINITY, f);
  }

  /**
   * The part of it from one {@code s} to another, where the function may have corners: it must be
   * smooth in between, on the scale of what lies between, or of the scatter of {@code s}.
   */
  static double overScale(
      double degreesOfFreedom, double start, double end, DoubleUnaryOperator f) {
    if (degreesOfFreedom > KNOWN_WELL) {
      return start <= 1 && 1 < end ? f.applyAsDouble(1) : 0;
    }
    double half = degreesOfFreedom / 2;
    double constant = Math.log(2) + half * Math.log(half) - LogGamma.value(half);
    DoubleUnaryOperator weighted =
        s ->
            s <= 0
                ? 0
                : Math.exp(constant + (degreesOfFreedom - 1) * Math.log(s) - half * s * s)
                    * f.applyAsDouble(s);
    double from = Math.max(start, lowestScale(degreesOfFreedom));
    double to = Math.min(end, highestScale(degreesOfFreedom));
    if (!(from < to)) {
      return 0;
    }
    return degreesOfFreedom < FEW
        ? integrate(
            u -> 3 * u * u * weighted.applyAsDouble(u * u * u), Math.cbrt(from), Math.cbrt(to), 16)
        : integrate(weighted, from, to, 6);
  }

  /** The lowest {@code s} that counts for anything. */
  static double lowestScale(double degreesOfFreedom) {
    return degreesOfFreedom < FEW ? 0 : Math.max(0, 1 - SCALE_REACH / root(degreesOfFreedom));
  }

  /** The highest {@code s} that counts for anything. */
  static double highestScale(double degreesOfFreedom) {
    return 1 + SCALE_REACH / root(degreesOfFreedom);
  }

  private static double root(double degreesOfFreedom) {
    return Math.sqrt(2 * degreesOfFreedom);
  }
}
