package fairboil.analysis.figure;

import java.util.random.RandomGenerator;

/** The distribution that a line of a budget stands for. */
public enum Shape {
  /** Normal; Student's t, scaled, where the degrees of freedom are few (JCGM 101:2008, 6.4.9). */
  NORMAL {
    @Override
    double draw(double standardUncertainty, double degreesOfFreedom, RandomGenerator random) {
      return standardUncertainty
          * (Double.isInfinite(degreesOfFreedom)
              ? random.nextGaussian()
              : student(degreesOfFreedom, random));
    }
  },
  /** All values between two bounds alike, which lie √3 u to either side (JCGM 101:2008, 6.4.2). */
  RECTANGULAR {
    @Override
    double draw(double standardUncertainty, double degreesOfFreedom, RandomGenerator random) {
      return standardUncertainty * Math.sqrt(3) * (2 * random.nextDouble() - 1);
    }
  };

  /** Draws a deviation from the estimate. */
  abstract double draw(double standardUncertainty, double degreesOfFreedom, RandomGenerator random);

  /**
   * A draw of Student's t by the polar method (R. W. Bailey, Mathematics of Computation 62, 1994,
   * 779).
   */
  private static double student(double degreesOfFreedom, RandomGenerator random) {
    double radius = 1 - random.nextDouble();
    double angle = 2 * Math.PI * random.nextDouble();
    double square = degreesOfFreedom * Math.expm1(-2 / degreesOfFreedom * Math.log(radius));
    return Math.sqrt(square) * Math.cos(angle);
  }
}
