package fairboil.analysis.effect;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import java.util.List;
import java.util.Optional;

/**
 * How a response follows the air temperature, from differences between burns of the same build, so
 * that builds burnt in cold and warm weather are not mistaken for cold and warm stoves.
 *
 * @param slope change of the response for each kelvin of ambient
 * @param standardError its standard error
 * @param degreesOfFreedom burns less builds less one
 */
record AmbientSlope(double slope, double standardError, int degreesOfFreedom) {

  /** A sum of squared differences of ambient below this is none, K². */
  private static final double NO_SPREAD = 0.5;

  /** The slope, or empty if an ambient is not known, or ambients within builds hardly differ. */
  static Optional<AmbientSlope> of(List<Burns> builds) {
    int degreesOfFreedom = -1;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Burns build : builds) {
      double[] burns = build.point().burns();
      for (int i = 0; i < burns.length; i++) {
        double x = build.ambients()[i] - build.meanAmbient();
        double y = burns[i] - build.point().mean();
        xx += x * x;
        xy += x * y;
        yy += y * y;
      }
      degreesOfFreedom += burns.length - 1;
    }
    if (!builds.stream().allMatch(Burns::knowAmbients)
        || degreesOfFreedom < 1
        || !(xx > NO_SPREAD)) {
      return Optional.empty();
    }
    double rest = Math.max(0, yy - xy * xy / xx) / degreesOfFreedom;
    return Optional.of(new AmbientSlope(xy / xx, Math.sqrt(rest / xx), degreesOfFreedom));
  }

  Interval interval(double confidence) {
    return Interval.around(
        slope, Measured.coverageFactor(confidence, degreesOfFreedom) * standardError);
  }
}
