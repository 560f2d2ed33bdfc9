package fairboil.analysis.heat;

import fairboil.analysis.trace.Trace;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A part of a trace as the means of equal stretches: all that a heat balance needs of it.
 * Immutable.
 */
public final class BlockMeans {

  private static final double LEAST_JUMP = 1.5;
  private static final double TIMES_USUAL = 6;

  private final double[] seconds;
  private final double[] celsius;

  private BlockMeans(double[] seconds, double[] celsius) {
    this.seconds = seconds;
    this.celsius = celsius;
  }

  /**
   * Means at given times.
   *
   * @param seconds mean time of each block, s, rising; copied
   * @param celsius mean temperature of each block, °C, none missing; copied
   */
  public static BlockMeans of(double[] seconds, double[] celsius) {
    if (seconds.length != celsius.length) {
      throw new IllegalArgumentException(
          seconds.length + " times and " + celsius.length + " temperatures");
    }
    return new BlockMeans(seconds.clone(), celsius.clone());
  }

  /**
   * The means of the readings from one time to another.
   *
   * @param trace the readings
   * @param from first time, s
   * @param to last time, s
   * @param most the most blocks, at least 1
   * @param leastSeconds the least length of a block, s, above 0
   * @param origin the time from which the blocks' times are counted, s
   */
  public static BlockMeans of(
      Trace trace, double from, double to, int most, double leastSeconds, double origin) {
    Trace part = trace.between(from, to).withoutMissing();
    double length = Math.max(leastSeconds, (to - from) / most);
    double[] seconds = new double[part.size()];
    double[] celsius = new double[part.size()];
    int blocks = 0;
    int start = 0;
    while (start < part.size()) {
      double number = Math.floor((part.secondsAt(start) - from) / length);
      int end = start;
      double time = 0;
      double sum = 0;
      while (end < part.size() && Math.floor((part.secondsAt(end) - from) / length) == number) {
        time += part.secondsAt(end) - origin;
        sum += part.celsiusAt(end);
        end++;
      }
      seconds[blocks] = time / (end - start);
      celsius[blocks++] = sum / (end - start);
      start = end;
    }
    return new BlockMeans(Arrays.copyOf(seconds, blocks), Arrays.copyOf(celsius, blocks));
  }

  /**
   * The blocks before the first sudden change: where the water was poured out, or the probe taken
   * out, the rest is no longer this pot.
   */
  public BlockMeans untilJump() {
    double[] rates = new double[Math.max(0, size() - 1)];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = Math.abs(celsius[i + 1] - celsius[i]) / (seconds[i + 1] - seconds[i]);
    }
    double usual = Trace.of(Arrays.copyOf(seconds, rates.length), rates, 0).median();
    for (int i = 0; i < rates.length; i++) {
      double length = seconds[i + 1] - seconds[i];
      if (rates[i] * length > Math.max(LEAST_JUMP, TIMES_USUAL * usual * length)) {
        return first(i + 1);
      }
    }
    return this;
  }

  /** The blocks before the first that is warmer than a temperature. */
  public BlockMeans below(double limit) {
    for (int i = 0; i < size(); i++) {
      if (celsius[i] > limit) {
        return first(i);
      }
    }
    return this;
  }

  private BlockMeans first(int count) {
    return new BlockMeans(Arrays.copyOf(seconds, count), Arrays.copyOf(celsius, count));
  }

  /** How many blocks there are. */
  public int size() {
    return seconds.length;
  }

  /** Mean temperature of a block, °C. */
  public double celsiusAt(int block) {
    return celsius[block];
  }

  /** The times; a copy. */
  public double[] seconds() {
    return seconds.clone();
  }

  /** The temperatures; a copy. */
  public double[] celsius() {
    return celsius.clone();
  }

  /** From the first block to the last, s. */
  public double span() {
    return size() == 0 ? 0 : seconds[size() - 1] - seconds[0];
  }

  /** Mean of the temperatures, °C; NaN for none. */
  public double mean() {
    return Arrays.stream(celsius).average().orElse(Double.NaN);
  }

  /** Temperature of the last block less that of the first, K; 0 for none. */
  public double rise() {
    return size() == 0 ? 0 : celsius[size() - 1] - celsius[0];
  }

  /** The integral of a function of the temperature from the first block to each, by trapezoids. */
  double[] integral(DoubleUnaryOperator of) {
    double[] integral = new double[size()];
    double last = size() == 0 ? 0 : of.applyAsDouble(celsius[0]);
    for (int i = 1; i < integral.length; i++) {
      double now = of.applyAsDouble(celsius[i]);
      integral[i] = integral[i - 1] + (last + now) / 2 * (seconds[i] - seconds[i - 1]);
      last = now;
    }
    return integral;
  }
}
