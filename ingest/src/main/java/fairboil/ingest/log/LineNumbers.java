package fairboil.ingest.log;

import java.util.Arrays;

/** The line on which each reading stands; small, because most follow the one before. */
final class LineNumbers {

  private int[] firstRows = new int[8];
  private int[] firstLines = new int[8];
  private int runs;
  private int size;
  private int next = -1;

  /** The line of the next reading. */
  void add(int line) {
    if (line != next) {
      if (runs == firstRows.length) {
        firstRows = Arrays.copyOf(firstRows, runs * 2);
        firstLines = Arrays.copyOf(firstLines, runs * 2);
      }
      firstRows[runs] = size;
      firstLines[runs++] = line;
    }
    next = line + 1;
    size++;
  }

  /** The line of a reading, counted from 0. */
  int of(int reading) {
    int found = Arrays.binarySearch(firstRows, 0, runs, reading);
    int run = found >= 0 ? found : -found - 2;
    return firstLines[run] + reading - firstRows[run];
  }
}
