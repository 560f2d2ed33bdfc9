package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.DecimalMark;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Reading;
import fairboil.ingest.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads {@code stopwatch.csv} in either of its forms: one row a mark, or one row a run with a
 * column for each event. Either way the result has one row of {@link StopwatchSheet} a mark.
 */
public final class StopwatchReader {

  private static final ChoiceText<Event> EVENTS = new ChoiceText<>(Event.class);

  /** The columns that the wide form shares with the long one. */
  private static final SheetSchema WIDE =
      new SheetSchema(
          StopwatchSheet.SCHEMA.file(),
          "the marks of a run",
          List.of(StopwatchSheet.RUN, StopwatchSheet.BUILD, StopwatchSheet.BY));

  private record EventColumn(
      int index, String written, String named, String event, Optional<Unit> unit) {}

  private final Grid grid;
  private final Header header;
  private final List<GridRow> body;
  private final List<Row> marks = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private StopwatchReader(Grid grid, int headerAt) {
    this.grid = grid;
    this.header = Header.of(grid, WIDE, grid.rows().get(headerAt));
    this.body = grid.rows().subList(headerAt + 1, grid.rows().size());
  }

  /** The event that a text names, if it is one that has a meaning here. */
  public static Optional<Event> event(String text) {
    return EVENTS.read(text) instanceof Reading.Read<Event> read
        ? Optional.of(read.value())
        : Optional.empty();
  }

  /** Reads the sheet in the form that its header shows. */
  public static SheetRows read(Grid grid) {
    SheetRows read =
        isWide(grid)
            ? new StopwatchReader(grid, SheetReader.headerRow(WIDE, grid)).readWide()
            : SheetReader.read(StopwatchSheet.SCHEMA, grid);
    return StopwatchCheck.check(read);
  }

  // The long form has a column for the event or for the time; the wide form has neither.
  private static boolean isWide(Grid grid) {
    if (grid.rows().isEmpty()) {
      return false;
    }
    int at = SheetReader.headerRow(StopwatchSheet.SCHEMA, grid);
    Header header = Header.of(grid, StopwatchSheet.SCHEMA, grid.rows().get(at));
    var known = header.known().keySet();
    return !known.contains(StopwatchSheet.EVENT)
        && header.cells().stream().anyMatch(cell -> eventColumn(cell).isPresent());
  }

  private SheetRows readWide() {
    findings.addAll(grid.findings());
    findings.addAll(header.findings());
    List<EventColumn> events = eventColumns();
    HeaderCell run = header.known().get(StopwatchSheet.RUN);
    if (run == null) {
      findings.add(Finding.error(header.place(), MarkSays.NO_RUNS, MarkSays.ADD_RUNS));
    } else {
      body.forEach(line -> readRow(line, run, events));
    }
    return new SheetRows(grid.place(), marks, List.of(), findings);
  }

  private List<EventColumn> eventColumns() {
    List<EventColumn> events = new ArrayList<>();
    for (HeaderCell cell : header.cells()) {
      if (cell.column().isEmpty()) {
        Optional<EventColumn> event = eventColumn(cell).or(() -> freeEvent(cell));
        event.ifPresentOrElse(events::add, () -> findings.add(notAnEvent(cell)));
      }
    }
    return events;
  }

  private static Optional<EventColumn> eventColumn(HeaderCell cell) {
    return HeaderName.of(cell.written()).stream()
        .flatMap(
            way ->
                event(way.name()).stream()
                    .map(
                        event ->
                            new EventColumn(
                                cell.index(),
                                cell.written(),
                                cell.named(),
                                event.label(),
                                way.unitOf(List.of(Dimension.DURATION)))))
        .findFirst();
  }

  // A column of times under another header is an event that has no meaning here but is kept.
  private Optional<EventColumn> freeEvent(HeaderCell cell) {
    HeaderName way = HeaderName.of(cell.written()).get(0);
    Optional<Unit> unit = way.unitOf(List.of(Dimension.DURATION));
    CellContext context = new CellContext(unit, DecimalMark.UNKNOWN);
    List<String> filled = ColumnFindings.filled(body, cell.index());
    boolean times =
        !filled.isEmpty()
            && filled.stream()
                .allMatch(
                    text ->
                        StopwatchSheet.TIME.read(text, context) instanceof Reading.Read<ClockTime>);
    if (!times) {
      return Optional.empty();
    }
    return Optional.of(
        new EventColumn(cell.index(), cell.written(), cell.named(), way.name(), unit));
  }

  private Finding notAnEvent(HeaderCell cell) {
    return Finding.note(header.place().column(cell.named()), MarkSays.NO_EVENT, MarkSays.EVENTS);
  }

  private void readRow(GridRow line, HeaderCell run, List<EventColumn> events) {
    Place place = Place.of(grid.place().file(), line.line());
    if (line.width() > header.width()) {
      findings.add(Finding.error(place, SheetSays.WIDER_THAN_HEADER, SheetSays.QUOTE_CELL));
    } else if (line.cell(run.index()).isEmpty()) {
      findings.add(Finding.error(place.column(run.named()), MarkSays.NO_RUN, MarkSays.FILL_RUN));
    } else {
      events.forEach(event -> readMark(line, place, event));
    }
  }

  private void readMark(GridRow line, Place place, EventColumn event) {
    String text = line.cell(event.index());
    if (text.isEmpty()) {
      return;
    }
    Place cell = place.column(event.named());
    CellContext context = new CellContext(event.unit(), grid.mark());
    Reading<ClockTime> reading = StopwatchSheet.TIME.read(text, context);
    if (reading instanceof Reading.Read<ClockTime> read) {
      Row.Builder mark = Row.at(place);
      header.known().forEach((column, shared) -> copy(column, shared, line, place, mark));
      mark.put(StopwatchSheet.EVENT, Given.of(event.event(), event.written(), cell));
      mark.put(StopwatchSheet.TIME, new Given<>(read.value(), text, read.unit(), cell));
      read.remark().ifPresent(remark -> findings.add(Finding.note(cell, remark, Message.NONE)));
      marks.add(mark.build());
    } else if (reading instanceof Reading.Refused<ClockTime> no) {
      findings.add(Finding.error(cell, no.problem(), no.remedy()));
    }
  }

  private static void copy(
      Column<?> column, HeaderCell shared, GridRow line, Place place, Row.Builder mark) {
    String text = line.cell(shared.index());
    if (!text.isEmpty()) {
      for (Column<String> known :
          List.of(StopwatchSheet.RUN, StopwatchSheet.BUILD, StopwatchSheet.BY)) {
        if (known.equals(column)) {
          mark.put(known, Given.of(text, text, place.column(shared.named())));
        }
      }
    }
  }
}
