package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The times of a log put in order: midnight, a change of summer time, rows swapped, whole tables
 * written again, and restarts of the clock, after which it is taken to go on. What cannot be put in
 * order is an error. For one thread and one log.
 */
final class Timeline {

  private static final Template TWELVE_HOURS =
      Template.of(
          "the clock goes back by 12 hours, so it was read as a clock of 12 hours without AM and"
              + " PM");
  private static final Template SUMMER_TIME =
      Template.of("the clock goes back by an hour, which was taken for the end of summer time");
  private static final Template GOES_BACK =
      Template.of("time goes back by {value} on this line, so the log was not read");
  private static final Template CHECK_CLOCK =
      Template.of("check the logger's clock, or take out the lines that are out of order");
  private static final Template SWAPPED =
      Template.of(
          "{count|pair of lines was|pairs of lines were} in the wrong order and put right by their"
              + " time");
  private static final Template REPEATED =
      Template.of("{count|line repeats|lines repeat} one before word for word: left out");

  private static final double DAY = 86_400;
  private static final double HALF_DAY = 43_200;
  private static final double HOUR = 3600;

  /** A run has at least this many readings: fewer after a fall of the clock are disorder. */
  private static final int SHORTEST_RUN = 5;

  /** A fall of the clock by more than this is another run, in seconds. */
  private static final double FALL_OF_RESTART = 600;

  private static final int SAMPLE = 250_000;

  private final double[] seconds;
  private final TimeAxis.Kind kind;
  private final List<Integer> headersAgain;
  private final List<Series> values;
  private final LineNumbers lines;
  private final Remarks remarks;
  private final double interval;

  private final BitSet repeated = new BitSet();
  private final List<Integer> swaps = new ArrayList<>();
  private final List<Integer> starts = new ArrayList<>();
  private double shift;
  private int last;
  private int beforeLast;
  private double startWritten;
  private boolean failed;

  private Timeline(TableReader table, TimeAxis.Kind kind, List<Series> values, Remarks remarks) {
    this.seconds = table.times().drain();
    this.kind = kind;
    this.headersAgain = table.headersAgain();
    this.values = values;
    this.lines = table.lines();
    this.remarks = remarks;
    this.interval = usualStep(seconds);
  }

  /** Puts the times of a table in order. */
  static Timeline of(TableReader table, TimeAxis.Kind kind, List<Series> values, Remarks remarks) {
    Timeline timeline = new Timeline(table, kind, values, remarks);
    timeline.order();
    return timeline;
  }

  /** The median step forward, of a long log that of a sample; 0 if there is none. */
  static double usualStep(double[] times) {
    int stride = 1 + times.length / SAMPLE;
    double[] steps = new double[times.length / stride + 1];
    int count = 0;
    for (int i = 1; i < times.length; i += stride) {
      double step = times[i] - times[i - 1];
      if (step > 0) {
        steps[count++] = step;
      }
    }
    Arrays.sort(steps, 0, count);
    return count == 0 ? 0 : steps[count / 2];
  }

  /** Whether the times could not be put in order; then an error says so. */
  boolean hasFailed() {
    return failed;
  }

  /** Seconds of each reading since the first, never decreasing; not a copy. */
  double[] seconds() {
    return seconds;
  }

  /** The readings that repeat one before. */
  BitSet repeated() {
    return repeated;
  }

  /** The readings with which another run starts: after a restart of the clock or a long hole. */
  List<Integer> starts() {
    return starts;
  }

  private void order() {
    startWritten = seconds.length == 0 ? 0 : seconds[0];
    last = 0;
    beforeLast = -1;
    for (int i = 1; i < seconds.length && !failed; i++) {
      double written = seconds[i];
      seconds[i] = written + shift;
      if (seconds[i] > seconds[last] || (seconds[i] == seconds[last] && !continuesCopy(i))) {
        goOn(i);
      } else {
        goBack(i, written);
      }
    }
    tell();
  }

  private void goOn(int i) {
    double step = seconds[i] - seconds[last];
    if (step > HOUR && step > 100 * interval) {
      starts.add(i);
    }
    beforeLast = last;
    last = i;
  }

  private void goBack(int i, double written) {
    double fall = seconds[last] - seconds[i];
    double leap = leap(fall, i);
    if (leap > 0) {
      shift += leap;
      seconds[i] += leap;
      goOn(i);
    } else if (isCopy(i)) {
      repeated.set(i);
      seconds[i] = seconds[last];
    } else if (isSwapped(i)) {
      swap(i);
    } else if (isRestart(i, written, fall)) {
      restart(i, written);
    } else {
      fail(i, fall);
    }
  }

  // What a clock jumps back by at midnight, at noon without AM and PM, and in autumn.
  private double leap(double fall, int i) {
    if (kind == TimeAxis.Kind.ELAPSED) {
      return 0;
    }
    if (kind == TimeAxis.Kind.TIME_OF_DAY && fall > HALF_DAY && fall <= DAY) {
      return DAY;
    }
    double slack = 10 * interval + 2;
    if (kind == TimeAxis.Kind.TIME_OF_DAY && fall <= HALF_DAY && fall > HALF_DAY - slack) {
      remarks.note(remarks.line(lines.of(i)), TWELVE_HOURS.with());
      return HALF_DAY;
    }
    if (fall <= HOUR && fall > HOUR - slack && interval < 300) {
      remarks.note(remarks.line(lines.of(i)), SUMMER_TIME.with());
      return HOUR;
    }
    return 0;
  }

  private boolean continuesCopy(int i) {
    return repeated.get(i - 1) && isRepeated(i, seconds[i]);
  }

  // One equal row may be chance, where another run starts: a copy has a second.
  private boolean isCopy(int i) {
    boolean alone =
        !repeated.get(i - 1)
            && i + 1 < seconds.length
            && !isRepeated(i + 1, seconds[i + 1] + shift);
    return !alone && isRepeated(i, seconds[i]);
  }

  private boolean isRepeated(int i, double time) {
    int found = Arrays.binarySearch(seconds, 0, last + 1, time);
    if (found < 0) {
      return false;
    }
    int j = found;
    while (j > 0 && seconds[j - 1] == time) {
      j--;
    }
    for (; j <= last && seconds[j] == time; j++) {
      if (!repeated.get(j) && isSame(i, j)) {
        return true;
      }
    }
    return false;
  }

  private boolean isSame(int i, int j) {
    for (Series series : values) {
      if (Double.compare(series.get(i), series.get(j)) != 0) {
        return false;
      }
    }
    return !values.isEmpty();
  }

  // Two neighbours in the wrong order, and the one after them where it belongs.
  private boolean isSwapped(int i) {
    boolean fits = beforeLast >= 0 && last == i - 1 && seconds[i] >= seconds[beforeLast];
    boolean goesOn = i + 1 == seconds.length || seconds[i + 1] + shift >= seconds[last];
    return fits && goesOn && swaps.size() < Math.max(3, seconds.length / 100);
  }

  private void swap(int i) {
    double later = seconds[last];
    seconds[last] = seconds[i];
    seconds[i] = later;
    swaps.add(i);
    for (Series series : values) {
      double value = series.get(i);
      series.set(i, series.get(i - 1));
      series.set(i - 1, value);
    }
    beforeLast = last;
    last = i;
  }

  private boolean isRestart(int i, double written, double fall) {
    double span = seconds[last] - shift - startWritten;
    boolean early = written - startWritten <= 0.1 * span;
    boolean marked = headersAgain.contains(i);
    return (early || marked || fall > FALL_OF_RESTART) && isRun(i);
  }

  private boolean isRun(int from) {
    int count = 1;
    while (from + count < seconds.length
        && count < SHORTEST_RUN
        && seconds[from + count] >= seconds[from + count - 1] - (count == 1 ? shift : 0)) {
      count++;
    }
    return count == SHORTEST_RUN;
  }

  private void restart(int i, double written) {
    shift = seconds[last] + interval - written;
    seconds[i] = written + shift;
    startWritten = written;
    starts.add(i);
    beforeLast = -1;
    last = i;
  }

  private void fail(int i, double fall) {
    failed = true;
    remarks.error(
        remarks.line(lines.of(i)), GOES_BACK.with(Arguments.seconds(fall)), CHECK_CLOCK.with());
  }

  private void tell() {
    if (!swaps.isEmpty()) {
      remarks.note(
          remarks.line(lines.of(swaps.get(0))), SWAPPED.with(Argument.count(swaps.size())));
    }
    if (!repeated.isEmpty()) {
      remarks.note(
          remarks.line(lines.of(repeated.nextSetBit(0))),
          REPEATED.with(Argument.count(repeated.cardinality())));
    }
  }
}
