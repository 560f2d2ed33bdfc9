package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.SpreadsheetTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Times that a spreadsheet may have turned into others. It takes 1:30 on a stopwatch for half past
 * one and writes 01:30:00 AM; of 24:30 it may leave the day out and write 12:30:00 AM.
 *
 * <p>What tells: minutes and seconds that were turned into hours show no seconds in any mark of the
 * run, and lie hours apart, or a day and minutes. A clock tells a burn of minutes that begins by
 * day. Marks that may be either are asked about, and where a start cannot be told nothing that
 * counts from it is used.
 */
final class TurnedTimes {

  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;

  /** Stopwatches show less than five minutes at lighting; clocks show more than five o'clock. */
  private static final double FIRST_CLOCK = 5 * HOUR;

  /** Longer after lighting, a time with AM or PM is asked about. */
  private static final double LONGEST_BURN_BY_HALVES = HOUR;

  /** Longer after lighting, any other is asked about. */
  private static final double LONGEST_BURN = 3 * HOUR;

  /** Workbooks count days from 1899, 1900 or 1904: marks so old are durations of over a day. */
  private static final int FIRST_YEAR = 1950;

  private record Turned(Row row, SpreadsheetTime time) {

    double seconds() {
      return time.inSeconds();
    }

    boolean isAfterStart() {
      return seconds() > 0;
    }

    Argument written() {
      return Argument.cell(cell(row).written());
    }
  }

  private final List<Finding> findings = new ArrayList<>();
  private final Set<Row> asked = new HashSet<>();
  private final Set<Row> starts = new HashSet<>();

  private TurnedTimes() {}

  /** Looks at the marks of a sheet, run by run. */
  static TurnedTimes of(List<List<Row>> runs) {
    TurnedTimes turned = new TurnedTimes();
    List<List<Turned>> doubted = new ArrayList<>();
    runs.forEach(marks -> turned.look(marks, doubted));
    boolean elsewhere = !turned.asked.isEmpty();
    doubted.forEach(marks -> turned.leftADayOut(marks, elsewhere));
    return turned;
  }

  /** The marks that are asked about. */
  Set<Row> asked() {
    return asked;
  }

  /** Whether a mark of midnight is the start of a stopwatch, since others of its run are turned. */
  boolean isStart(Row mark) {
    return starts.contains(mark);
  }

  List<Finding> findings() {
    return findings;
  }

  private void look(List<Row> marks, List<List<Turned>> doubted) {
    marks.stream().filter(TurnedTimes::isOfOldDate).forEach(this::askOldDate);
    List<Turned> times =
        marks.stream()
            .flatMap(mark -> turned(mark).stream())
            .filter(it -> mayBeTurned(it))
            .toList();
    if (times.stream().noneMatch(Turned::isAfterStart)) {
      return;
    }
    boolean elapsedBeside = times.size() < marks.stream().filter(TurnedTimes::isRunning).count();
    if (!times.stream().allMatch(it -> it.time().isWholeMinutes())) {
      late(times);
    } else if (times.stream().allMatch(it -> it.seconds() < HOUR)) {
      inFirstHour(times, doubted);
    } else if (!elapsedBeside && isByClock(times)) {
      late(times);
    } else {
      askAll(times);
    }
  }

  private static Optional<Turned> turned(Row mark) {
    return SpreadsheetTime.of(cell(mark).written()).map(time -> new Turned(mark, time));
  }

  // A date tells a clock; a text that was read as something else is no such time.
  private static boolean mayBeTurned(Turned it) {
    ClockTime read = cell(it.row()).value();
    return read instanceof ClockTime.Elapsed
        || (read instanceof ClockTime.TimeOfDay clock && clock.date().isEmpty());
  }

  private static boolean isRunning(Row mark) {
    return turned(mark).isPresent()
        || (cell(mark).value() instanceof ClockTime.Elapsed elapsed && elapsed.seconds() >= 0);
  }

  /** A day may have been left out of any of these; without seconds, they are lost besides. */
  private void inFirstHour(List<Turned> times, List<List<Turned>> doubted) {
    if (times.stream().anyMatch(it -> it.time().seconds().isEmpty())) {
      askAll(times);
    } else {
      doubted.add(times);
    }
  }

  // In a sheet with other turned times this may be one too; alone, it rarely is.
  private void leftADayOut(List<Turned> times, boolean elsewhere) {
    if (elsewhere) {
      askAll(times);
      return;
    }
    Turned one = of(Event.BOIL, times).filter(Turned::isAfterStart).orElse(last(times));
    Argument read = Argument.name(one.time().asHoursMinutesAndSeconds());
    Argument other = Argument.name(one.time().asMinutesAndSecondsOfNextDay());
    findings.add(
        Finding.warning(
            cell(one.row()).place(),
            MarkSays.DAY_LEFT_OUT.with(one.written(), read, other),
            MarkSays.TYPE_EITHER.with(read, other)));
  }

  /** A burn of minutes that begins by day. */
  private static boolean isByClock(List<Turned> times) {
    Turned start = start(times);
    if (times.size() < 2 || start.seconds() < FIRST_CLOCK || start.seconds() >= DAY) {
      return false;
    }
    boolean lit = of(Event.LIT, times).isPresent();
    Optional<Turned> boil = of(Event.BOIL, times);
    boolean soon = times.stream().allMatch(it -> Math.abs(after(start, it)) <= HOUR);
    return soon || (lit && boil.filter(it -> Math.abs(after(start, it)) > HOUR).isEmpty());
  }

  private static Turned start(List<Turned> times) {
    return of(Event.LIT, times)
        .or(() -> of(Event.POT_ON, times))
        .orElseGet(() -> times.stream().min((a, b) -> compare(a, b)).orElseThrow());
  }

  private static int compare(Turned a, Turned b) {
    return Double.compare(a.seconds(), b.seconds());
  }

  private static Turned last(List<Turned> times) {
    return times.stream().max((a, b) -> compare(a, b)).orElseThrow();
  }

  private static Optional<Turned> of(Event event, List<Turned> times) {
    return times.stream().filter(it -> isOf(event, it)).findFirst();
  }

  private static boolean isOf(Event event, Turned it) {
    return StopwatchReader.event(it.row().get(StopwatchSheet.EVENT)).equals(Optional.of(event));
  }

  /** How long one is after the other, s; across midnight for times of a day. */
  private static double after(Turned start, Turned other) {
    double apart = other.seconds() - start.seconds();
    if (start.seconds() >= DAY || other.seconds() >= DAY) {
      return apart;
    }
    return apart > DAY / 2 ? apart - DAY : apart <= -DAY / 2 ? apart + DAY : apart;
  }

  private void late(List<Turned> times) {
    Turned start = start(times);
    for (Turned it : times) {
      double most = it.time().hasHalf() ? LONGEST_BURN_BY_HALVES : LONGEST_BURN;
      boolean clock = cell(it.row()).value() instanceof ClockTime.TimeOfDay;
      if (clock && Math.abs(after(start, it)) > most) {
        ask(
            it,
            (it.time().hasHalf() ? MarkSays.HOUR_AWAY : MarkSays.HOURS_AWAY)
                .with(
                    it.written(),
                    Argument.name(start.row().get(StopwatchSheet.EVENT)),
                    start.written()));
      }
    }
  }

  private void askAll(List<Turned> times) {
    for (Turned it : times) {
      boolean exact = it.time().seconds().isPresent() || isOf(Event.LIT, it);
      if (it.isAfterStart() || !exact) {
        ask(
            it,
            (it.time().hasHalf() ? MarkSays.HALF_OR_TURNED : MarkSays.HOURS_OR_TURNED)
                .with(it.written()));
      } else {
        starts.add(it.row());
      }
    }
  }

  private void ask(Turned it, Message problem) {
    asked.add(it.row());
    findings.add(
        Finding.error(
            cell(it.row()).place(),
            problem,
            MarkSays.TYPE_TIME.with(
                Argument.list(typed(it.time()).stream().map(Argument::clause).toList()))));
  }

  private static List<Message> typed(SpreadsheetTime time) {
    List<Message> typed = new ArrayList<>();
    boolean hours = time.inSeconds() < FIRST_CLOCK - HOUR;
    if (time.isWholeMinutes()) {
      typed.add(MarkSays.FOR_MINUTES.with(Argument.name(time.asMinutesAndSeconds())));
      if (time.hours() == 0) {
        typed.add(MarkSays.FOR_NEXT_DAY.with(Argument.name(time.asMinutesAndSecondsOfNextDay())));
      }
    }
    Argument asHours = Argument.name(time.asHoursMinutesAndSeconds());
    if (hours && time.seconds().isEmpty()) {
      typed.add(MarkSays.FOR_HOURS_AND_SECONDS.with(asHours));
    } else if (hours) {
      typed.add((time.isWholeMinutes() ? MarkSays.FOR_HOURS : MarkSays.FOR_MINUTES).with(asHours));
    }
    return typed.isEmpty() ? List.of(MarkSays.SINCE_START) : typed;
  }

  private static boolean isOfOldDate(Row mark) {
    return cell(mark).value() instanceof ClockTime.TimeOfDay clock
        && clock.date().filter(date -> date.getYear() < FIRST_YEAR).isPresent();
  }

  private void askOldDate(Row mark) {
    asked.add(mark);
    findings.add(
        Finding.error(
            cell(mark).place(),
            MarkSays.TURNED_INTO_DATE.with(Argument.cell(cell(mark).written())),
            MarkSays.TYPE_MINUTES_OR_DATED));
  }

  private static Given<ClockTime> cell(Row mark) {
    return mark.cell(StopwatchSheet.TIME).orElseThrow();
  }
}
