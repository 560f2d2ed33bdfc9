package fairboil.analysis.effect;

import java.util.Arrays;
import java.util.Map;

/**
 * A build with its burns and the air temperature of each.
 *
 * @param point the build
 * @param ambients air temperature of each burn, °C; NaN where it is not known
 * @param covariates the mean of each further quantity to allow for, by name, in order
 */
@SuppressWarnings("ArrayRecordComponent") // stays inside this package
record Burns(BuildPoint point, double[] ambients, Map<String, Double> covariates) {

  /** A build with nothing further to allow for. */
  Burns(BuildPoint point, double[] ambients) {
    this(point, ambients, Map.of());
  }

  /** The same burns, of a build with another hole error or other responses. */
  Burns as(BuildPoint other) {
    return new Burns(other, ambients, covariates);
  }

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
    return as(new BuildPoint(point.build(), point.design(), point.holeError(), burns));
  }
}
