package fairboil.ingest;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.StopwatchReader;
import fairboil.ingest.sheet.StopwatchSheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The stopwatch marks of a study, each of a run that the study has. */
final class MarkTable {

  private static final List<String> LABELS =
      Arrays.stream(Event.values()).map(Choice::label).toList();

  private final RunTable runs;
  private final List<Mark> marks = new ArrayList<>();
  private final Repeats strangers = new Repeats();
  private final Map<String, Row> strangerRow = new LinkedHashMap<>();
  private final Repeats freeEvents = new Repeats();
  private final List<Finding> findings = new ArrayList<>();

  private MarkTable(RunTable runs) {
    this.runs = runs;
  }

  static MarkTable of(List<Row> rows, RunTable runs) {
    MarkTable table = new MarkTable(runs);
    rows.forEach(table::add);
    if (runs.runs().isEmpty()) {
      table.findings.addAll(withoutRuns(rows));
    } else {
      table.strangers.forEach(table::unknownRun, table.findings);
    }
    table.freeEvents.forEach(table::freeEvent, table.findings);
    return table;
  }

  private static List<Finding> withoutRuns(List<Row> rows) {
    return rows.stream()
        .limit(1)
        .map(
            row ->
                Finding.note(
                    Place.of(row.place().file()),
                    TableSays.NO_RUN_READ.with(),
                    TableSays.CORRECT_SHEET.with(Argument.sheet(RunsSheet.SCHEMA.file()))))
        .toList();
  }

  private void add(Row row) {
    String name = row.get(StopwatchSheet.RUN);
    Optional<String> build = row.value(StopwatchSheet.BUILD);
    Optional<Run> run = runs.find(name, build);
    if (run.isEmpty()) {
      String shown = build.map(of -> name + " of build " + of).orElse(name);
      strangerRow.putIfAbsent(shown, row);
      strangers.add(shown, row.place(StopwatchSheet.RUN));
      return;
    }
    String text = row.get(StopwatchSheet.EVENT);
    Optional<Event> event = StopwatchReader.event(text);
    if (event.isEmpty()) {
      freeEvents.add(text, row.place(StopwatchSheet.EVENT));
    }
    marks.add(
        new Mark(
            run.get().key(),
            event,
            text,
            row.cell(StopwatchSheet.TIME).orElseThrow(),
            row.value(StopwatchSheet.BY)));
  }

  private Finding unknownRun(String shown, Argument rows) {
    Row row = Objects.requireNonNull(strangerRow.get(shown));
    String name = row.get(StopwatchSheet.RUN);
    Optional<String> build = row.value(StopwatchSheet.BUILD);
    Optional<Place> aside = runs.aside(name);
    if (aside.isPresent()) {
      return Finding.note(
          strangers.first(shown),
          TableSays.RUN_ASIDE.with(Argument.clause(named(name, build)), rows),
          TableSays.CORRECT_ROW.with(Argument.place(aside.get())));
    }
    return Finding.error(
        strangers.first(shown),
        TableSays.MARKS_ASIDE.with(Argument.clause(runs.problem(name, build)), rows),
        runs.remedy(name, build));
  }

  private static Message named(String run, Optional<String> build) {
    Argument name = Argument.name(run);
    return build
        .map(of -> TableSays.RUN_OF_BUILD.with(name, Argument.name(of)))
        .orElseGet(() -> TableSays.RUN.with(name));
  }

  // Any text may be an event; only one that looks misspelt is worth a warning.
  private Finding freeEvent(String text, Argument rows) {
    Optional<String> likely = Nearest.to(text, LABELS);
    Message problem = TableSays.UNKNOWN_EVENT.with(Argument.cell(text), rows);
    return likely
        .map(label -> Finding.warning(freeEvents.first(text), problem, Nearest.didYouMean(label)))
        .orElseGet(() -> Finding.note(freeEvents.first(text), problem, Message.NONE));
  }

  List<Mark> marks() {
    return marks;
  }

  List<Finding> findings() {
    return findings;
  }
}
