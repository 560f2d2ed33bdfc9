package fairboil.analysis.run;

import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.StopwatchStart;
import fairboil.ingest.log.TimeAxis;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.Optional;

/**
 * Where stopwatch and clock stand on the run's time line, which starts with the first reading of
 * the log, or without a log with the first mark.
 *
 * <p>Elapsed marks count from the event at which the stopwatch was started, and that is taken to be
 * when the log began. Where the log tells time of day, and so does {@code lit at} or a mark of that
 * event, the stopwatch is set by the clock instead; a time of day told only to the minute does so
 * only if the two differ by more than that minute.
 *
 * @param seconds when the stopwatch was at zero, s on the time line
 * @param midnight local midnight, s on the time line, if times of day can be placed on it
 * @param uncertainty standard uncertainty of the joining of marks and log, s
 * @param byClockOfLog whether midnight is that of the log's own clock
 */
record StopwatchZero(
    double seconds, Optional<Double> midnight, double uncertainty, boolean byClockOfLog) {

  private static final double DAY = 86_400;
  private static final double ROOT_12 = Math.sqrt(12);

  static StopwatchZero of(RunContext context, PreparedLog log, List<Mark> marks) {
    Optional<ClockTime.TimeOfDay> start = startByClock(context, marks);
    if (log.time().isPresent()) {
      return withLog(log.time().get(), start);
    }
    double first = firstElapsed(marks);
    if (start.isPresent()) {
      double clock = start.get().secondOfDay();
      return new StopwatchZero(0, Optional.of(-clock), start.get().resolution() / ROOT_12, false);
    }
    return new StopwatchZero(-first, firstOfDay(marks).map(clock -> -clock), 0, false);
  }

  private static StopwatchZero withLog(TimeAxis time, Optional<ClockTime.TimeOfDay> start) {
    double reading = Math.max(time.interval(), time.resolution()) / ROOT_12;
    if (time.startSecondOfDay().isEmpty()) {
      return new StopwatchZero(0, start.map(clock -> -clock.secondOfDay()), reading, false);
    }
    double midnight = -time.startSecondOfDay().getAsDouble();
    if (start.isEmpty()) {
      return new StopwatchZero(0, Optional.of(midnight), reading, true);
    }
    double resolution = start.get().resolution();
    double byClock = wrapped(midnight + start.get().secondOfDay());
    boolean logBeganInThatMinute = resolution >= 60 && Math.abs(byClock) <= resolution;
    return logBeganInThatMinute
        ? new StopwatchZero(0, Optional.of(midnight), reading, true)
        : new StopwatchZero(
            byClock, Optional.of(midnight), Math.hypot(reading, resolution / ROOT_12), true);
  }

  /** The event at which the stopwatch was started. */
  static Event startEvent(RunContext context) {
    return context.setting(Settings.STOPWATCH_STARTED_AT) == StopwatchStart.POT_ON
        ? Event.POT_ON
        : Event.LIT;
  }

  private static Optional<ClockTime.TimeOfDay> startByClock(RunContext context, List<Mark> marks) {
    Event event = startEvent(context);
    for (Mark mark : marks) {
      if (mark.event().filter(event::equals).isPresent()
          && mark.time().value() instanceof ClockTime.TimeOfDay clock) {
        return Optional.of(clock);
      }
    }
    return event == Event.LIT ? litAt(context) : Optional.empty();
  }

  /** The time of day of lighting that the runs sheet tells, if it does. */
  static Optional<ClockTime.TimeOfDay> litAt(RunContext context) {
    Optional<ClockTime> lit = context.cell(RunsSheet.LIT_AT).map(Given::value);
    return lit.isPresent() && lit.get() instanceof ClockTime.TimeOfDay clock
        ? Optional.of(clock)
        : Optional.empty();
  }

  private static double firstElapsed(List<Mark> marks) {
    double first = Double.POSITIVE_INFINITY;
    for (Mark mark : marks) {
      if (mark.time().value() instanceof ClockTime.Elapsed elapsed) {
        first = Math.min(first, elapsed.seconds());
      }
    }
    return Math.min(0, first);
  }

  private static Optional<Double> firstOfDay(List<Mark> marks) {
    Optional<Double> first = Optional.empty();
    for (Mark mark : marks) {
      if (first.isEmpty() && mark.time().value() instanceof ClockTime.TimeOfDay clock) {
        first = Optional.of(clock.secondOfDay());
      }
    }
    return first;
  }

  /**
   * The same, moved by an offset between the clocks.
   *
   * @param offset what is added to the times of marks of that kind, s
   * @param kind which marks told the offset
   * @param newUncertainty standard uncertainty of the joining after it, s
   */
  StopwatchZero moved(double offset, MarkKind kind, double newUncertainty) {
    boolean clockToo = kind == MarkKind.TIME_OF_DAY || !byClockOfLog;
    return new StopwatchZero(
        seconds + offset,
        clockToo ? midnight.map(at -> at + offset) : midnight,
        newUncertainty,
        byClockOfLog);
  }

  /** How marks tell time. */
  enum MarkKind {
    /** Since the stopwatch was started. */
    ELAPSED,
    /** By a clock. */
    TIME_OF_DAY;

    boolean isOf(ClockTime time) {
      return (this == ELAPSED) == (time instanceof ClockTime.Elapsed);
    }
  }

  /** When a mark was made, s on the time line; empty if it cannot be placed on it. */
  Optional<Double> place(ClockTime time) {
    if (time instanceof ClockTime.Elapsed elapsed) {
      return Optional.of(seconds + elapsed.seconds());
    }
    double clock = ((ClockTime.TimeOfDay) time).secondOfDay();
    return midnight.map(at -> wrapped(at + clock));
  }

  /** Across midnight: to within half a day of the start. */
  private static double wrapped(double sinceStart) {
    double within = sinceStart % DAY;
    return within > DAY / 2 ? within - DAY : within < -DAY / 2 ? within + DAY : within;
  }
}
