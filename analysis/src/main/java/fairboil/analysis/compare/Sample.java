package fairboil.analysis.compare;

import fairboil.analysis.figure.Deviations;
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
    return new Sample(name, units.length, mean, Deviations.squares(units));
  }

  double variance() {
    return squares / (n - 1);
  }
}
