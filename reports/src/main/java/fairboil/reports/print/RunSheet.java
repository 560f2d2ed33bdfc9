package fairboil.reports.print;

import fairboil.ingest.Study;
import fairboil.ingest.choice.BoilMeans;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.StopwatchStart;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.StopwatchSheet;
import fairboil.ingest.sheet.Unread;
import java.util.ArrayList;
import java.util.List;

/** The form of one run: cautions, steps, stopwatch marks and every field of {@code runs.csv}. */
final class RunSheet {

  /** Marks of people's own, such as a gust. */
  private static final int FREE_MARKS = 3;

  /** Settings that the sheet follows. */
  private static final List<Column<?>> FOLLOWED =
      List.of(Settings.STOPWATCH_STARTED_AT, Settings.BOIL_MEANS, Settings.SHOW_UNITS);

  private final Booklet booklet;
  private final Study study;
  private final Row settings;
  private final Flow flow;

  private RunSheet(Booklet booklet, FormHead head, Study study) {
    this.booklet = booklet;
    this.study = study;
    this.settings = study.settings();
    this.flow =
        new Flow(
            booklet,
            head,
            head.paper().label(),
            "One sheet for one burn. Fill it in by hand, then type it into runs.csv and"
                + " stopwatch.csv. Write the unit beside a number if it is not the one printed.");
  }

  static byte[] of(FormHead head, Study study, Typefaces typefaces) {
    return Booklet.of(head, typefaces, booklet -> new RunSheet(booklet, head, study).draw());
  }

  private void draw() {
    unread();
    flow.heading("Cautions");
    Safety.all(flow);
    flow.heading("Order of steps");
    flow.steps(new RunSteps(started(), boilMeans()).all());
    flow.turn();
    stopwatch();
    FieldGrid grid = new FieldGrid(flow, booklet.lettering(), settings.get(Settings.SHOW_UNITS));
    for (RunFields.Group group : RunFields.groups()) {
      flow.heading(group.title());
      grid.draw(group.columns());
    }
  }

  /** What the sheet would have followed and could not read. */
  private void unread() {
    List<Finding> unread =
        FOLLOWED.stream()
            .flatMap(setting -> settings.unread(setting).stream())
            .map(Unread::finding)
            .toList();
    if (!unread.isEmpty()) {
      flow.heading("Mend this before you use the sheet");
      study.told(unread).forEach(it -> flow.paragraph(it.toString(), Type.BODY));
    }
  }

  private StopwatchStart started() {
    return settings.get(Settings.STOPWATCH_STARTED_AT);
  }

  private String boilMeans() {
    return settings.value(Settings.BOIL_MEANS).map(BoilMeans::label).orElse("what you agreed on");
  }

  private void stopwatch() {
    flow.heading("Stopwatch (stopwatch.csv)");
    flow.paragraph(
        "The stopwatch starts at “"
            + started().label()
            + "”; a time of day will do too, for all marks alike. "
            + said(StopwatchSheet.RUN)
            + "; "
            + said(StopwatchSheet.BUILD)
            + ". Leave a line empty if it did not happen.",
        Type.SMALL);
    List<List<String>> rows = new ArrayList<>();
    for (Event event : Event.values()) {
      rows.add(List.of(event.label(), RunSteps.means(event, boilMeans()), "", ""));
    }
    for (int i = 0; i < FREE_MARKS; i++) {
      rows.add(List.of("", "", "", ""));
    }
    flow.table(new Table(columns(), 6.2, rows));
  }

  private List<Table.Column> columns() {
    double width = flow.width();
    return List.of(
        column(StopwatchSheet.EVENT, 0.16 * width),
        new Table.Column("that is", "", 0.37 * width),
        column(StopwatchSheet.TIME, 0.29 * width),
        column(StopwatchSheet.BY, 0.18 * width));
  }

  private static Table.Column column(Column<?> column, double width) {
    return new Table.Column(column.name(), column.meaning(), width);
  }

  private static String said(Column<?> column) {
    return column.name() + ": " + column.meaning() + ", as below";
  }
}
