package fairboil.analysis;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Numbers that measurements ought not to be, and sometimes are: equal, copied down, huge, tiny. */
public final class OddNumbers {

  private static final double[] LEVELS = {0, 1, 640.3, -40, 1e15, -1e15, 1e-15, 0.1, 1.0 / 3};
  private static final double[] SCATTERS = {0, 0, 0, 1e-17, 1e-12, 1e-9, 2e-8, 1e-3, 1, 1e15};

  private final SplittableRandom random;

  /** Numbers that follow from a seed. */
  public OddNumbers(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** From 0 to one less than the end. */
  public int below(int end) {
    return random.nextInt(end);
  }

  /** Whether a thing of this chance happens. */
  public boolean happens(double chance) {
    return random.nextDouble() < chance;
  }

  /** One of them. */
  public double oneOf(double... values) {
    return values[below(values.length)];
  }

  /** One of them. */
  public <T> T oneOf(java.util.List<T> values) {
    return values.get(below(values.size()));
  }

  /** A finite number of any size, both signs. */
  public double any() {
    double size = Math.pow(10, random.nextDouble(-16, 16));
    return oneOf(0, 1, -1, size, -size, LEVELS[below(LEVELS.length)]);
  }

  /** A finite number above 0. */
  public double positive() {
    return Math.pow(10, random.nextDouble(-16, 16));
  }

  /** Values about some level, which scatter much, little, by rounding alone or not at all. */
  public double[] values(int count) {
    double level = LEVELS[below(LEVELS.length)];
    double scatter = SCATTERS[below(SCATTERS.length)];
    double step = SCATTERS[below(SCATTERS.length)];
    boolean steps = happens(0.3);
    double[] values = new double[count];
    Arrays.setAll(
        values, i -> level + scatter * random.nextGaussian() + (steps ? step * (i % 3) : 0));
    return values;
  }
}
