package fairboil.ingest.log;

import java.util.BitSet;

/**
 * The readings of a log that belong to the run: from one to before another, those that repeat one
 * before left out.
 *
 * @param from the first, counted from 0 over all readings of the file
 * @param to the one after the last
 * @param repeated those left out; not to be changed
 */
record Readings(int from, int to, BitSet repeated) {

  /** The readings whose times lie between two moments, ends included. */
  static Readings between(double from, double to, double[] seconds, BitSet repeated) {
    int first = 0;
    while (first < seconds.length && seconds[first] < from) {
      first++;
    }
    int last = seconds.length;
    while (last > first && seconds[last - 1] > to) {
      last--;
    }
    return new Readings(first, last, repeated);
  }

  /** How many there are. */
  int size() {
    return Math.max(0, to - from) - repeatedInside();
  }

  private int repeatedInside() {
    return to <= from ? 0 : repeated.get(from, to).cardinality();
  }

  /** How many lie outside, repeated ones not counted. */
  int outside(int all) {
    return all - size() - repeated.cardinality();
  }

  /** The readings that belong to the run, of a column of all: itself, if they are all. */
  double[] of(double[] all) {
    if (size() == all.length) {
      return all;
    }
    double[] kept = new double[size()];
    int count = 0;
    for (int i = from; i < to; i++) {
      if (!repeated.get(i)) {
        kept[count++] = all[i];
      }
    }
    return kept;
  }

  /** The index over all readings of the one of that index among those that belong to the run. */
  int indexOf(int kept) {
    int i = from;
    for (int left = kept; ; i++) {
      if (!repeated.get(i) && left-- == 0) {
        return i;
      }
    }
  }
}
