package fairboil.analysis.trace;

import java.util.Arrays;

/** Medians and scales that a few wild readings do not move. */
final class Robust {

  /** Standard deviation of a normal distribution over its median absolute deviation. */
  private static final double NORMAL = 1.482602218505602;

  private Robust() {}

  /** The median of the first {@code count} values, which are put in another order; NaN for none. */
  static double median(double[] values, int count) {
    if (count == 0) {
      return Double.NaN;
    }
    int middle = count / 2;
    double upper = select(values, count, middle);
    if (count % 2 == 1) {
      return upper;
    }
    double lower = values[0];
    for (int i = 1; i < middle; i++) {
      lower = Math.max(lower, values[i]);
    }
    return (lower + upper) / 2;
  }

  /** The median of the values that are not NaN; NaN for none. The array is left as it is. */
  static double median(double[] values) {
    double[] copy = new double[values.length];
    int count = 0;
    for (double value : values) {
      if (!Double.isNaN(value)) {
        copy[count++] = value;
      }
    }
    return median(copy, count);
  }

  /**
   * The standard deviation that normal deviations around 0 would have, from the median of their
   * absolute values; the array is changed.
   */
  static double scale(double[] deviations, int count) {
    for (int i = 0; i < count; i++) {
      deviations[i] = Math.abs(deviations[i]);
    }
    return count == 0 ? 0 : NORMAL * median(deviations, count);
  }

  /** Hoare's selection: puts the k-th smallest at k, smaller ones before it. */
  private static double select(double[] values, int count, int k) {
    int low = 0;
    int high = count - 1;
    while (high - low > 16) {
      double pivot = medianOfThree(values[low], values[(low + high) >>> 1], values[high]);
      int i = low;
      int j = high;
      while (i <= j) {
        while (values[i] < pivot) {
          i++;
        }
        while (values[j] > pivot) {
          j--;
        }
        if (i <= j) {
          double swap = values[i];
          values[i++] = values[j];
          values[j--] = swap;
        }
      }
      if (k <= j) {
        high = j;
      } else if (k >= i) {
        low = i;
      } else {
        return values[k];
      }
    }
    Arrays.sort(values, low, high + 1);
    return values[k];
  }

  private static double medianOfThree(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
