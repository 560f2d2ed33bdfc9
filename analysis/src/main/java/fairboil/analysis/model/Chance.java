package fairboil.analysis.model;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Random numbers that are the same in every run of the program: one stream a purpose. */
public final class Chance {

  private Chance() {}

  /**
   * The stream of a purpose.
   *
   * @param seed the seed of the study
   * @param key what it is about, such as a claim
   * @param purpose what it is for
   */
  public static RandomGenerator stream(int seed, String key, String purpose) {
    long mixed = 31L * seed + key.hashCode();
    return new SplittableRandom(0x9E3779B97F4A7C15L * mixed + purpose.hashCode());
  }
}
