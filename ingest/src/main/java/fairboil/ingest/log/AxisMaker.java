package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import java.util.OptionalDouble;
import tech.tablesaw.api.DoubleColumn;

/** Makes the time axis of the readings that belong to a run. */
final class AxisMaker {

  private static final Template SPREAD =
      Template.of("{count|reading} share each time, so they were spread evenly over {value}");
  private static final Template COARSE =
      Template.of(
          "{count|reading has|readings have} the time of the one before, of {count} in all: the"
              + " times, written to {value}, are too coarse");
  private static final Template WRITE_SECONDS =
      Template.of("have the logger write seconds, or decimals of them");
  private static final Template HOLES =
      Template.of(
          "the log has {count|hole} of more than 3 intervals; the longest, of {value}, ends on this"
              + " line");

  private static final double DAY = 86_400;
  private static final double STEADY = 0.8;
  private static final int HOLE = 3;

  private final TimeReader clock;
  private final LineNumbers lines;
  private final Remarks remarks;

  AxisMaker(TimeReader clock, LineNumbers lines, Remarks remarks) {
    this.clock = clock;
    this.lines = lines;
    this.remarks = remarks;
  }

  /**
   * The axis.
   *
   * @param run the readings of the run, at least one
   * @param all seconds of all readings of the file; used up
   */
  TimeAxis make(Readings run, double[] all) {
    double[] seconds = run.of(all);
    double start = seconds[0];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] -= start;
    }
    spreadStamps(seconds, run);
    double interval = Timeline.usualStep(seconds);
    tellHoles(seconds, interval, run);
    return new TimeAxis(
        DoubleColumn.create("time", seconds),
        clock.kind(),
        startSecondOfDay(start),
        clock.startDate().map(date -> date.plusDays(daysUntil(start))),
        interval,
        clock.resolution());
  }

  private OptionalDouble startSecondOfDay(double start) {
    OptionalDouble first = clock.startSecondOfDay();
    return first.isEmpty()
        ? first
        : OptionalDouble.of(first.getAsDouble() + start - DAY * daysUntil(start));
  }

  private long daysUntil(double start) {
    return (long) Math.floor((clock.startSecondOfDay().orElse(0) + start) / DAY);
  }

  // Several readings within one step of the clock: a steady number of them are spread over it.
  private void spreadStamps(double[] seconds, Readings run) {
    int doubles = doubles(seconds);
    if (doubles == 0) {
      return;
    }
    int[] starts = starts(seconds, seconds.length - doubles);
    int usual = usualCount(starts, seconds.length);
    if (usual > 1) {
      spread(seconds, starts, usual);
      remarks.note(
          remarks.line(lines.of(run.indexOf(0))),
          SPREAD.with(Argument.count(usual), Arguments.seconds(clock.resolution())));
    } else if (doubles * 10 > seconds.length) {
      remarks.note(
          remarks.line(lines.of(run.indexOf(0))),
          COARSE.with(
              Argument.count(doubles),
              Argument.count(seconds.length),
              Arguments.seconds(clock.resolution())),
          WRITE_SECONDS.with());
    }
  }

  private static int doubles(double[] seconds) {
    int doubles = 0;
    for (int i = 1; i < seconds.length; i++) {
      doubles += seconds[i] == seconds[i - 1] ? 1 : 0;
    }
    return doubles;
  }

  private static int[] starts(double[] seconds, int count) {
    int[] starts = new int[count];
    int found = 0;
    for (int i = 0; i < seconds.length; i++) {
      if (i == 0 || seconds[i] != seconds[i - 1]) {
        starts[found++] = i;
      }
    }
    return starts;
  }

  // How many readings most stamps have, the first and the last left out; 1 if that is not steady.
  private static int usualCount(int[] starts, int all) {
    int[] counts = new int[64];
    for (int i = 1; i + 1 < starts.length; i++) {
      counts[Math.min(63, starts[i + 1] - starts[i])]++;
    }
    int usual = 1;
    for (int count = 2; count < 63; count++) {
      usual = counts[count] > counts[usual] ? count : usual;
    }
    return counts[usual] >= STEADY * (starts.length - 2) && all > 2 * usual ? usual : 1;
  }

  private void spread(double[] seconds, int[] starts, int usual) {
    double step = clock.resolution();
    for (int s = 0; s < starts.length; s++) {
      int from = starts[s];
      int to = s + 1 < starts.length ? starts[s + 1] : seconds.length;
      int parts = Math.max(usual, to - from);
      // The first stamp may have lost its first readings: those it has are its last.
      int missing = s == 0 ? parts - (to - from) : 0;
      for (int i = from; i < to; i++) {
        seconds[i] += step * (i - from + missing) / parts;
      }
    }
    double start = seconds[0];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] -= start;
    }
  }

  private void tellHoles(double[] seconds, double interval, Readings run) {
    int holes = 0;
    int longest = 0;
    for (int i = 1; i < seconds.length; i++) {
      double step = seconds[i] - seconds[i - 1];
      if (step > HOLE * interval && interval > 0) {
        holes++;
        longest = longest == 0 || step > length(seconds, longest) ? i : longest;
      }
    }
    if (holes > 0) {
      remarks.note(
          remarks.line(lines.of(run.indexOf(longest))),
          HOLES.with(Argument.count(holes), Arguments.seconds(length(seconds, longest))));
    }
  }

  private static double length(double[] seconds, int i) {
    return seconds[i] - seconds[i - 1];
  }
}
