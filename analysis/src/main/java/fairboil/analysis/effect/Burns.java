package fairboil.analysis.effect;

import java.util.Arrays;

/**
 * A build with its burns and the air temperature of each.
 *
 * @param point the build
 * @param ambients air temperature of each burn, °C; NaN where it is not known
 */
@SuppressWarnings("ArrayRecordComponent") // stays inside this package
record Burns(BuildPoint point, double[] ambients) {

  double meanAmbient() {
    return Arrays.stream(ambients).average().orElseThrow();
  }

  boolean knowAmbients() {
    return Arrays.stream(ambients).noneMatch(Double::isNaN);
  }

  /** The same burns, each moved along a slope to another air temperature. */
  Burns movedTo(double ambient, double slope) {
    double[] burns = point.burns();
    for (int i = 0; i < burns.length; i++) {
      burns[i] += slope * (ambient - ambients[i]);
    }
    return new Burns(
        new BuildPoint(point.build(), point.design(), point.holeError(), burns), ambients);
  }
}
