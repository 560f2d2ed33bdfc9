package fairboil.analysis.effect;

import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A build with its burns and the air temperature of each.
 *
 * @param point the build
 * @param runs the run of each burn; empty where that does not matter
 * @param ambients air temperature of each burn, °C; NaN where it is not known
 * @param covariates the value of each further quantity to allow for in each burn, by name, in order
 */
@SuppressWarnings("ArrayRecordComponent") // stays inside this package
record Burns(
    BuildPoint point, List<Key> runs, double[] ambients, Map<String, double[]> covariates) {

  /** A build with nothing further to allow for. */
  Burns(BuildPoint point, double[] ambients) {
    this(point, List.of(), ambients, Map.of());
  }

  /** The same burns, of a build with another hole error or other responses. */
  Burns as(BuildPoint other) {
    return new Burns(other, runs, ambients, covariates);
  }

  /** The same burns with these things alone to allow for. */
  Burns allowingFor(Map<String, double[]> some) {
    return new Burns(point, runs, ambients, some);
  }

  /** The same burns with one more thing to allow for, alike in all of them. */
  Burns and(String name, double value) {
    Map<String, double[]> more = new LinkedHashMap<>(covariates);
    double[] values = new double[ambients.length];
    Arrays.fill(values, value);
    more.put(name, values);
    return allowingFor(more);
  }

  /** The same build without one of its burns, of which there are two at least. */
  Burns without(int burn) {
    Map<String, double[]> rest = new LinkedHashMap<>();
    covariates.forEach((name, values) -> rest.put(name, without(values, burn)));
    List<Key> others = new ArrayList<>(runs);
    others.remove(burn);
    BuildPoint fewer =
        new BuildPoint(
            point.build(), point.design(), point.holeError(), without(point.burns(), burn));
    return new Burns(fewer, others, without(ambients, burn), rest);
  }

  static double[] without(double[] values, int left) {
    return IntStream.range(0, values.length)
        .filter(i -> i != left)
        .mapToDouble(i -> values[i])
        .toArray();
  }

  int size() {
    return ambients.length;
  }

  /** The mean of a further quantity over the burns. */
  double mean(String name) {
    return Arrays.stream(covariates.get(name)).average().orElseThrow();
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
