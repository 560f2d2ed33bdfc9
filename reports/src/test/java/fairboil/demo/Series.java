package fairboil.demo;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** Values one second apart. Immutable. */
final class Series {

  private final double[] values;

  private Series(double[] values) {
    this.values = values;
  }

  /** A series of so many values, given by their number from 0. */
  static Series of(int size, IntToDoubleFunction value) {
    double[] values = new double[size];
    Arrays.setAll(values, value);
    return new Series(values);
  }

  /** A series of values, copied. */
  static Series of(double[] values) {
    return new Series(values.clone());
  }

  int size() {
    return values.length;
  }

  double at(int index) {
    return values[index];
  }

  /** The sum with another series of the same size. */
  Series plus(Series other) {
    return of(size(), i -> values[i] + other.values[i]);
  }

  /** The sum with one value. */
  Series plus(double more) {
    return of(size(), i -> values[i] + more);
  }

  /** The highest value. */
  double highest() {
    return Arrays.stream(values).max().orElseThrow();
  }

  /** The mean of some values. */
  double mean(int from, int count) {
    return Arrays.stream(values, from, from + count).sum() / count;
  }

  /**
   * What a first-order probe reads of it.
   *
   * @param lag its time constant, s; 0 for none
   */
  Series lagged(double lag) {
    double kept = lag > 0 ? StrictMath.exp(-1 / lag) : 0;
    double[] read = new double[values.length];
    double now = values[0];
    for (int i = 0; i < values.length; i++) {
      now = values[i] + (now - values[i]) * kept;
      read[i] = now;
    }
    return new Series(read);
  }
}
