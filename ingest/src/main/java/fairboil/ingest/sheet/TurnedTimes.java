package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Finding;
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

  private static final String DATED = "the time of day with its date, such as 2026-03-14 14:05:00";

  private record Turned(Row row, SpreadsheetTime time) {

    double seconds() {
      return time.inSeconds();
    }

    boolean isAfterStart() {
      return seconds() > 0;
    }

    String quoted() {
      return Words.quoted(cell(row).written());
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
    findings.add(
        Finding.warning(
            cell(one.row()).place(),
            one.quoted()
                + " was read as "
                + one.time().asHoursMinutesAndSeconds()
                + ", but a spreadsheet that leaves days out shows "
                + one.time().asMinutesAndSecondsOfNextDay()
                + " the same way, and no mark of this run has seconds",
            "type "
                + one.time().asHoursMinutesAndSeconds()
                + " or "
                + one.time().asMinutesAndSecondsOfNextDay()
                + ", whichever it was"));
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
            it.quoted()
                + " is more than "
                + (it.time().hasHalf() ? "an hour" : "3 hours")
                + " from "
                + start.row().get(StopwatchSheet.EVENT)
                + " at "
                + start.quoted());
      }
    }
  }

  private void askAll(List<Turned> times) {
    for (Turned it : times) {
      boolean exact = it.time().seconds().isPresent() || isOf(Event.LIT, it);
      if (it.isAfterStart() || !exact) {
        ask(it, it.quoted() + " could be " + meanings(it.time()));
      } else {
        starts.add(it.row());
      }
    }
  }

  private static String meanings(SpreadsheetTime time) {
    return (time.hasHalf() ? "a time of day" : "hours and minutes")
        + ", or minutes and seconds that a spreadsheet turned into "
        + (time.hasHalf() ? "one" : "them");
  }

  private void ask(Turned it, String problem) {
    asked.add(it.row());
    findings.add(
        Finding.error(
            cell(it.row()).place(),
            problem + ", so the mark was set aside",
            "type " + String.join(", ", typed(it.time())) + ", or " + DATED));
  }

  private static List<String> typed(SpreadsheetTime time) {
    List<String> typed = new ArrayList<>();
    boolean hours = time.inSeconds() < FIRST_CLOCK - HOUR;
    if (time.isWholeMinutes()) {
      typed.add(time.asMinutesAndSeconds() + " for minutes and seconds");
      if (time.hours() == 0) {
        typed.add(time.asMinutesAndSecondsOfNextDay() + " if a day was left out");
      }
    }
    if (hours && time.seconds().isEmpty()) {
      typed.add(time.asHoursMinutesAndSeconds() + " and the seconds for hours and minutes");
    } else if (hours) {
      String what = time.isWholeMinutes() ? " for hours and minutes" : " for minutes and seconds";
      typed.add(time.asHoursMinutesAndSeconds() + what);
    }
    return typed.isEmpty() ? List.of("the time since the stopwatch was started") : typed;
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
            Words.quoted(cell(mark).written())
                + " is a time that a spreadsheet turned into a date, so the mark was set aside",
            "type minutes and seconds, such as 24m30s, or " + DATED));
  }

  private static Given<ClockTime> cell(Row mark) {
    return mark.cell(StopwatchSheet.TIME).orElseThrow();
  }
}
