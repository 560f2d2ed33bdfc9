package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Looks at the marks of each run together, for what a single cell cannot show: minutes and seconds
 * that a spreadsheet turned into hours and minutes, times of day taken for times on a stopwatch,
 * and laps.
 */
final class StopwatchCheck {

  /** What spreadsheets make of 5:43: hours and minutes, with seconds that are always zero. */
  private static final Pattern NO_SECONDS =
      Pattern.compile("\\d{1,3}:\\d{2}:00(?:\\.0+)?(?: ?[aApP]\\.?[mM]\\.?)?");

  private static final Pattern MINUTES_AND_SECONDS = Pattern.compile("\\d{1,2}:\\d{2}");

  private static final double LONGEST_BURN = 3 * 3600.0;
  private static final double LATE_LIGHTING = 300;

  /** Pairs of events of which the first is never the later. */
  private static final List<List<Event>> ORDER =
      List.of(
          List.of(Event.LIT, Event.GAS_LIT),
          List.of(Event.LIT, Event.BOIL),
          List.of(Event.POT_ON, Event.BOIL),
          List.of(Event.POT_ON, Event.POT_OFF),
          List.of(Event.LIT, Event.FLAME_OUT),
          List.of(Event.GAS_LIT, Event.FLAME_OUT),
          List.of(Event.FLAME_OUT, Event.GLOW_OUT));

  /** What happens only once in a burn. */
  private static final Set<Event> ONCE =
      EnumSet.of(Event.LIT, Event.GAS_LIT, Event.BOIL, Event.FLAME_OUT, Event.GLOW_OUT);

  private final List<Finding> findings = new ArrayList<>();
  private final Set<Row> asked = new HashSet<>();

  private StopwatchCheck() {}

  /** The same marks, without those that are asked about. */
  static SheetRows check(SheetRows sheet) {
    StopwatchCheck check = new StopwatchCheck();
    Map<List<String>, List<Row>> runs = new LinkedHashMap<>();
    for (Row mark : sheet.rows()) {
      String build = mark.value(StopwatchSheet.BUILD).orElse("");
      runs.computeIfAbsent(List.of(mark.get(StopwatchSheet.RUN), build), run -> new ArrayList<>())
          .add(mark);
    }
    runs.values().forEach(check::run);
    List<Row> kept = sheet.rows().stream().filter(mark -> !check.asked.contains(mark)).toList();
    check.findings.addAll(0, sheet.findings());
    return new SheetRows(sheet.place(), kept, List.of(), check.findings);
  }

  private void run(List<Row> marks) {
    turnedIntoHours(marks);
    List<Row> left = marks.stream().filter(mark -> !asked.contains(mark)).toList();
    lateLighting(left);
    outOfOrder(left);
    Laps.compare(marks).ifPresent(findings::add);
    markedTwice(left);
  }

  private void turnedIntoHours(List<Row> marks) {
    List<Row> threePart =
        marks.stream()
            .filter(mark -> written(mark).chars().filter(c -> c == ':').count() == 2)
            .toList();
    boolean noSeconds =
        !threePart.isEmpty()
            && threePart.stream().allMatch(mark -> NO_SECONDS.matcher(written(mark)).matches());
    if (noSeconds && cannotBe(threePart)) {
      threePart.stream().filter(mark -> seconds(mark) > 0).forEach(this::askHours);
    }
  }

  private static boolean cannotBe(List<Row> marks) {
    double first = marks.stream().mapToDouble(StopwatchCheck::seconds).min().orElse(0);
    double last = marks.stream().mapToDouble(StopwatchCheck::seconds).max().orElse(0);
    boolean hours = marks.stream().anyMatch(mark -> isElapsed(mark) && seconds(mark) >= 3600);
    boolean lone = marks.size() == 1 && !isElapsed(marks.get(0));
    return hours || lone || last - first > LONGEST_BURN;
  }

  private void askHours(Row mark) {
    String text = written(mark);
    String minutes = text.replaceFirst(":00.*$", "").replaceFirst(":", "m") + "s";
    asked.add(mark);
    findings.add(
        Finding.error(
            time(mark).place(),
            Words.quoted(text)
                + " could be hours and minutes, or minutes and seconds that a spreadsheet turned"
                + " into them, so the mark was set aside",
            "type "
                + minutes
                + " for minutes and seconds, or a time of day with its date, such as"
                + " 2026-03-14 14:05:00"));
  }

  private void lateLighting(List<Row> marks) {
    marks.stream()
        .filter(mark -> event(mark).filter(event -> event == Event.LIT).isPresent())
        .filter(mark -> isElapsed(mark) && seconds(mark) > LATE_LIGHTING)
        .filter(mark -> MINUTES_AND_SECONDS.matcher(written(mark)).matches())
        .forEach(
            mark ->
                findings.add(
                    Finding.warning(
                        time(mark).place(),
                        Words.quoted(written(mark))
                            + " was read as minutes and seconds on a stopwatch, late for lighting",
                        "if it is a time of day, type it as "
                            + written(mark)
                            + ":00, and so for every mark of the run")));
  }

  private void outOfOrder(List<Row> marks) {
    for (List<Event> pair : ORDER) {
      Optional<Row> before = first(marks, pair.get(0));
      Optional<Row> after = first(marks, pair.get(1));
      if (before.isPresent() && after.isPresent() && isEarlier(after.get(), before.get())) {
        Optional<String> addedUp = Laps.addedUp(marks);
        if (addedUp.isPresent()) {
          askLaps(marks, before.get(), after.get(), addedUp.get());
          return;
        }
        tooEarly(before.get(), after.get());
      }
    }
  }

  // If one mark is a lap all are, whether or not they rise.
  private void askLaps(List<Row> marks, Row before, Row after, String addedUp) {
    marks.stream().filter(mark -> seconds(mark) > 0).forEach(asked::add);
    findings.add(
        Finding.error(
            time(after).place(),
            isBefore(after, before) + ", so the marks of this run were set aside",
            "correct the mark that is wrong, or, if these are laps, type the time since the"
                + " stopwatch was started: "
                + addedUp));
  }

  private static String isBefore(Row after, Row before) {
    return String.format(
        Locale.ROOT,
        "%s at %s is earlier than %s at %s",
        after.get(StopwatchSheet.EVENT),
        written(after),
        before.get(StopwatchSheet.EVENT),
        written(before));
  }

  // Two people may see the same thing; one who sees it twice writes of another run.
  private void markedTwice(List<Row> marks) {
    Map<List<Object>, Row> seen = new LinkedHashMap<>();
    for (Row mark : marks) {
      Optional<Event> event = event(mark).filter(ONCE::contains);
      List<Object> key = List.of(event, mark.value(StopwatchSheet.BY));
      Row before = event.isEmpty() ? null : seen.putIfAbsent(key, mark);
      if (before != null && seconds(before) != seconds(mark)) {
        findings.add(
            Finding.warning(
                time(mark).place(),
                event.get().label()
                    + " was marked before in this run, at "
                    + Words.quoted(written(before)),
                "see whether this mark belongs to another run, or take one of the two out"));
      }
    }
  }

  private static boolean isEarlier(Row mark, Row other) {
    return isElapsed(mark) && isElapsed(other) && seconds(mark) < seconds(other);
  }

  private void tooEarly(Row before, Row after) {
    if (asked.add(after)) {
      findings.add(
          Finding.error(
              time(after).place(),
              isBefore(after, before) + ", so the mark was set aside",
              "if these are laps, add them up: each mark is the time since the stopwatch was"
                  + " started"));
    }
  }

  private static Optional<Row> first(List<Row> marks, Event event) {
    return marks.stream().filter(mark -> event(mark).filter(event::equals).isPresent()).findFirst();
  }

  private static Optional<Event> event(Row mark) {
    return StopwatchReader.event(mark.get(StopwatchSheet.EVENT));
  }

  private static Given<ClockTime> time(Row mark) {
    return mark.cell(StopwatchSheet.TIME).orElseThrow();
  }

  private static String written(Row mark) {
    return time(mark).written();
  }

  private static boolean isElapsed(Row mark) {
    return time(mark).value() instanceof ClockTime.Elapsed;
  }

  private static double seconds(Row mark) {
    return time(mark).value() instanceof ClockTime.Elapsed elapsed
        ? elapsed.seconds()
        : ((ClockTime.TimeOfDay) time(mark).value()).secondOfDay();
  }
}
