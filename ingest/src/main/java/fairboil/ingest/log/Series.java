package fairboil.ingest.log;

import java.util.ArrayList;
import java.util.List;

/**
 * Numbers collected one by one, in blocks: a long log is never held twice while it grows. For one
 * thread.
 */
final class Series {

  private static final int SHIFT = 13;
  private static final int BLOCK = 1 << SHIFT;

  private final List<double[]> blocks = new ArrayList<>();
  private double[] last = new double[0];
  private int filled;
  private int size;

  void add(double value) {
    if (filled == last.length) {
      grow();
    }
    last[filled++] = value;
    size++;
  }

  private void grow() {
    last = new double[BLOCK];
    blocks.add(last);
    filled = 0;
  }

  int size() {
    return size;
  }

  double get(int index) {
    return blocks.get(index >>> SHIFT)[index & (BLOCK - 1)];
  }

  void set(int index, double value) {
    blocks.get(index >>> SHIFT)[index & (BLOCK - 1)] = value;
  }

  /** Takes the numbers out: none are left. */
  double[] drain() {
    double[] array = new double[size];
    for (int from = 0; from < array.length; from += BLOCK) {
      double[] block = blocks.set(from >>> SHIFT, null);
      System.arraycopy(block, 0, array, from, Math.min(BLOCK, array.length - from));
    }
    blocks.clear();
    last = new double[0];
    filled = 0;
    size = 0;
    return array;
  }
}
