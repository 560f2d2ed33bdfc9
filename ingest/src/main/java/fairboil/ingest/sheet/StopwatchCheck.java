package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Looks at the marks of each run together, for what a single cell cannot show: times that a
 * spreadsheet turned into others ({@link TurnedTimes}), times of day taken for times on a
 * stopwatch, and laps.
 */
final class StopwatchCheck {

  private static final Pattern MINUTES_AND_SECONDS = Pattern.compile("\\d{1,2}:\\d{2}");

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

  /** The same marks; those that are asked about tell no time. */
  static SheetRows check(SheetRows sheet) {
    StopwatchCheck check = new StopwatchCheck();
    Map<List<String>, List<Row>> runs = new LinkedHashMap<>();
    for (Row mark : sheet.rows()) {
      String build = mark.value(StopwatchSheet.BUILD).orElse("");
      runs.computeIfAbsent(List.of(mark.get(StopwatchSheet.RUN), build), run -> new ArrayList<>())
          .add(mark);
    }
    TurnedTimes turned = TurnedTimes.of(List.copyOf(runs.values()));
    check.asked.addAll(turned.asked());
    check.findings.addAll(turned.findings());
    runs.values().forEach(check::run);
    check.findings.addAll(0, sheet.findings());
    List<Row> told = sheet.rows().stream().map(mark -> check.told(mark, turned)).toList();
    return new SheetRows(sheet.place(), told, List.of(), check.findings);
  }

  private Row told(Row mark, TurnedTimes turned) {
    if (asked.contains(mark)) {
      return withTime(mark, new ClockTime.Asked());
    }
    return turned.isStart(mark)
        ? withTime(mark, new ClockTime.Elapsed(0, time(mark).value().resolution()))
        : mark;
  }

  private static Row withTime(Row mark, ClockTime other) {
    return mark.copy().put(StopwatchSheet.TIME, time(mark).map(time -> other)).build();
  }

  private void run(List<Row> marks) {
    List<Row> left = marks.stream().filter(mark -> !asked.contains(mark)).toList();
    lateLighting(left);
    outOfOrder(left);
    if (left.size() == marks.size()) {
      Laps.compare(marks).ifPresent(findings::add);
    }
    markedTwice(left);
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
                        MarkSays.LATE_LIGHTING.with(Argument.cell(written(mark))),
                        MarkSays.AS_TIME_OF_DAY.with(Argument.name(written(mark))))));
  }

  private void outOfOrder(List<Row> marks) {
    for (List<Event> pair : ORDER) {
      Optional<Row> before = first(marks, pair.get(0));
      Optional<Row> after = first(marks, pair.get(1));
      if (before.isPresent() && after.isPresent() && isEarlier(after.get(), before.get())) {
        Optional<Argument> addedUp = Laps.addedUp(marks);
        if (addedUp.isPresent()) {
          askLaps(marks, before.get(), after.get(), addedUp.get());
          return;
        }
        tooEarly(before.get(), after.get());
      }
    }
  }

  // If one mark is a lap all are, whether or not they rise.
  private void askLaps(List<Row> marks, Row before, Row after, Argument addedUp) {
    marks.stream().filter(mark -> seconds(mark) > 0).forEach(asked::add);
    findings.add(
        Finding.error(
            time(after).place(),
            isBefore(MarkSays.LAPS_ASIDE, after, before),
            MarkSays.CORRECT_OR_ADD_UP.with(addedUp)));
  }

  private static Message isBefore(Template so, Row after, Row before) {
    return so.with(
        Argument.name(after.get(StopwatchSheet.EVENT)),
        Argument.name(written(after)),
        Argument.name(before.get(StopwatchSheet.EVENT)),
        Argument.name(written(before)));
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
                MarkSays.MARKED_TWICE.with(
                    Argument.word(event.get().label()), Argument.cell(written(before))),
                MarkSays.OF_ANOTHER_RUN));
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
              time(after).place(), isBefore(MarkSays.MARK_ASIDE, after, before), MarkSays.ADD_UP));
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
