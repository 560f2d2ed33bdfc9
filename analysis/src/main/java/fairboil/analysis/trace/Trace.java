package fairboil.analysis.trace;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Temperatures over time, as arrays: the working form of a channel. Times never decrease; a missing
 * reading is NaN. Immutable.
 */
public final class Trace {

  /** A gap of more than this many sampling intervals is not bridged. */
  static final int BRIDGED_INTERVALS = 5;

  private static final int LEAST_FOR_SLOPE = 10;

  private final double[] seconds;
  private final double[] celsius;
  private final double interval;

  private Trace(double[] seconds, double[] celsius, double interval) {
    this.seconds = seconds;
    this.celsius = celsius;
    this.interval = interval;
  }

  /**
   * A trace of the given readings.
   *
   * @param seconds time of each reading, s, never decreasing; copied
   * @param celsius its value, °C, NaN where missing; copied, as long as {@code seconds}
   * @param interval the usual time between two readings, s; 0 if it is not known
   */
  public static Trace of(double[] seconds, double[] celsius, double interval) {
    if (seconds.length != celsius.length) {
      throw new IllegalArgumentException(
          seconds.length + " times and " + celsius.length + " temperatures");
    }
    return new Trace(seconds.clone(), celsius.clone(), interval);
  }

  /** As {@link #of}, of arrays that nobody else changes: not copied. */
  static Trace owning(double[] seconds, double[] celsius, double interval) {
    return new Trace(seconds, celsius, interval);
  }

  /** A trace without readings. */
  public static Trace empty() {
    return new Trace(new double[0], new double[0], 0);
  }

  /** The same readings with a correction added to each, K. */
  public Trace plus(double correction) {
    if (correction == 0) {
      return this;
    }
    double[] corrected = celsius.clone();
    for (int i = 0; i < corrected.length; i++) {
      corrected[i] += correction;
    }
    return new Trace(seconds, corrected, interval);
  }

  /** The mean of the readings that are there; NaN for none. */
  public double mean() {
    double sum = 0;
    int count = 0;
    for (double value : celsius) {
      if (!Double.isNaN(value)) {
        sum += value;
        count++;
      }
    }
    return count == 0 ? Double.NaN : sum / count;
  }

  /** The lowest of the readings that are there; NaN for none. */
  public double lowest() {
    double lowest = Double.NaN;
    for (double value : celsius) {
      lowest = value < lowest || Double.isNaN(lowest) ? value : lowest;
    }
    return lowest;
  }

  /** The highest of the readings that are there; NaN for none. */
  public double highest() {
    double highest = Double.NaN;
    for (double value : celsius) {
      highest = value > highest || Double.isNaN(highest) ? value : highest;
    }
    return highest;
  }

  /** The median of the readings that are there; NaN for none. */
  public double median() {
    return Robust.median(celsius);
  }

  /** Slope of a line through the readings that are there, K/s; empty for fewer than 10. */
  public OptionalDouble slope() {
    Trace present = withoutMissing();
    return present.size() < LEAST_FOR_SLOPE
        ? OptionalDouble.empty()
        : OptionalDouble.of(Line.through(present, 0, present.size()).slope());
  }

  /** The readings from one time to another, ends included. */
  public Trace between(double from, double to) {
    int first = indexAtOrAfter(from);
    int end = Math.max(first, indexAfter(to));
    if (first == 0 && end == size()) {
      return this;
    }
    return new Trace(
        Arrays.copyOfRange(seconds, first, end), Arrays.copyOfRange(celsius, first, end), interval);
  }

  /** The trace without its missing readings. */
  public Trace withoutMissing() {
    for (double value : celsius) {
      if (Double.isNaN(value)) {
        return within(0, Double.POSITIVE_INFINITY);
      }
    }
    return this;
  }

  /** The readings that are no further than {@code reach} from a temperature, none missing. */
  Trace within(double middle, double reach) {
    double[] times = new double[size()];
    double[] values = new double[size()];
    int kept = 0;
    for (int i = 0; i < size(); i++) {
      if (Math.abs(celsius[i] - middle) <= reach) {
        times[kept] = seconds[i];
        values[kept++] = celsius[i];
      }
    }
    return new Trace(Arrays.copyOf(times, kept), Arrays.copyOf(values, kept), interval);
  }

  /** How many readings there are, missing ones counted. */
  public int size() {
    return seconds.length;
  }

  /** Time of a reading, s. */
  public double secondsAt(int index) {
    return seconds[index];
  }

  /** Value of a reading, °C, NaN if missing. */
  public double celsiusAt(int index) {
    return celsius[index];
  }

  /** The usual time between two readings, s; 0 if it is not known. */
  public double interval() {
    return interval;
  }

  /** The longest time between two readings that is bridged by a straight line, s. */
  public double longestBridge() {
    return BRIDGED_INTERVALS * interval;
  }

  /** The first reading at or after a time, or the size if there is none. */
  int indexAtOrAfter(double time) {
    int low = 0;
    int high = seconds.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (seconds[middle] < time) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private int indexAfter(double time) {
    return indexAtOrAfter(Math.nextUp(time));
  }

  /** The values, not copied: for the hot loops of this package, which do not change them. */
  double[] values() {
    return celsius;
  }

  /** The times, not copied: for the hot loops of this package, which do not change them. */
  double[] times() {
    return seconds;
  }
}
