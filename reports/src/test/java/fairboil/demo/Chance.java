package fairboil.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Random numbers of one purpose: the same seed and purpose give the same numbers everywhere. */
final class Chance {

  private final Random random;

  private Chance(Random random) {
    this.random = random;
  }

  /** Numbers for one purpose of a study, independent of those for other purposes. */
  static Chance of(long seed, String purpose) {
    return new Chance(new Random(scattered(seed * 1_000_003L + purpose.hashCode())));
  }

  /**
   * Sends neighbours far apart, as {@link Random} started from neighbouring seeds begins with
   * nearly the same numbers: the finalizer of MurmurHash3 (A. Appleby, public domain).
   */
  private static long scattered(long seed) {
    long z = (seed ^ (seed >>> 33)) * 0xff51afd7ed558ccdL;
    z = (z ^ (z >>> 33)) * 0xc4ceb9fe1a85ec53L;
    return z ^ (z >>> 33);
  }

  /** A normal deviate of mean 0. */
  double gauss(double standardDeviation) {
    return standardDeviation * random.nextGaussian();
  }

  /** A number between two others, each as likely. */
  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** A whole number from {@code low} to {@code high}, both included. */
  int whole(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  /** The items in a random order. */
  <T> List<T> shuffled(List<T> items) {
    List<T> order = new ArrayList<>(items);
    Collections.shuffle(order, random);
    return order;
  }

  /**
   * First-order autoregressive noise, one value a second: values {@code n} seconds apart are
   * correlated by {@code exp(-n / memory)}.
   *
   * @param memory in seconds; 0 for white noise
   */
  Series noise(int length, double standardDeviation, double memory) {
    double kept = memory > 0 ? StrictMath.exp(-1 / memory) : 0;
    double fresh = standardDeviation * StrictMath.sqrt(1 - kept * kept);
    double[] noise = new double[length];
    double last = gauss(standardDeviation);
    for (int i = 0; i < length; i++) {
      noise[i] = last;
      last = kept * last + gauss(fresh);
    }
    return Series.of(noise);
  }
}
