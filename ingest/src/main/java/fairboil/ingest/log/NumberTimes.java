package fairboil.ingest.log;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Times in numbers: seconds, minutes or epochs in one column, or parts of a time in several. */
final class NumberTimes implements TimeReader {

  /**
   * A column of numbers.
   *
   * @param column its place, from 0
   * @param mark its decimal mark
   * @param seconds seconds of one unit of its numbers
   */
  record Part(int column, char mark, double seconds) {}

  /** No log is 300 years long: what stands there is no time, or a damaged one. */
  private static final double LONGEST = 1e10;

  private final List<Part> parts;
  private final double[] base;
  private final int[] decimals;
  private final NumberScanner numbers = new NumberScanner();
  private boolean started;
  private double seconds;

  NumberTimes(List<Part> parts) {
    this.parts = List.copyOf(parts);
    this.base = new double[parts.size()];
    this.decimals = new int[parts.size()];
  }

  // The first row's numbers are taken off before they are scaled: an epoch keeps its microseconds.
  @Override
  public boolean read(LineCells cells) {
    double sum = 0;
    double[] first = started ? base : new double[base.length];
    for (int i = 0; i < first.length; i++) {
      Part part = parts.get(i);
      int cell = part.column();
      if (cell >= cells.count()
          || !numbers.scan(cells.text(), cells.start(cell), cells.end(cell), part.mark())) {
        return false;
      }
      if (!started) {
        first[i] = numbers.value();
      }
      decimals[i] = Math.max(decimals[i], numbers.decimals());
      sum += (numbers.value() - first[i]) * part.seconds();
    }
    if (!(Math.abs(sum) <= LONGEST)) {
      return false;
    }
    start(first);
    seconds = sum;
    return true;
  }

  private void start(double[] first) {
    if (!started) {
      System.arraycopy(first, 0, base, 0, base.length);
      started = true;
    }
  }

  @Override
  public double seconds() {
    return seconds;
  }

  @Override
  public TimeAxis.Kind kind() {
    return TimeAxis.Kind.ELAPSED;
  }

  @Override
  public double resolution() {
    double finest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < decimals.length; i++) {
      finest = Math.min(finest, parts.get(i).seconds() / Math.pow(10, decimals[i]));
    }
    return finest;
  }

  @Override
  public OptionalDouble startSecondOfDay() {
    return OptionalDouble.empty();
  }

  @Override
  public Optional<LocalDate> startDate() {
    return Optional.empty();
  }
}
