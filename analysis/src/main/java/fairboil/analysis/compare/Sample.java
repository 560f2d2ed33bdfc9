package fairboil.analysis.compare;

import java.util.Arrays;

/**
 * The units of one thing that is compared: runs of a build, or means of builds of a design.
 *
 * @param name the thing
 * @param n how many units
 * @param mean their mean
 * @param squares the sum of their squared deviations
 */
record Sample(String name, int n, double mean, double squares) {

  static Sample of(String name, double[] units) {
    double mean = Arrays.stream(units).average().orElseThrow();
    double squares = Arrays.stream(units).map(unit -> (unit - mean) * (unit - mean)).sum();
    return new Sample(name, units.length, mean, squares);
  }

  double variance() {
    return squares / (n - 1);
  }
}
