package fairboil.analysis.run;

import fairboil.analysis.clock.ClockJoin;
import fairboil.analysis.clock.CommonEvent;
import fairboil.analysis.run.StopwatchZero.MarkKind;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.RunsSheet;
import java.util.List;

/** What a reader should know of the joining of the clocks of a run. */
final class ClockFindings {

  private static final String IF_FAR =
      "check that log and marks are of this run; if they are, give “lit at” in runs.csv and the log"
          + " as times of day, or the part of the log from lighting on by “log from”";

  private final RunContext context;
  private final PreparedLog log;
  private final List<Mark> marks;
  private final MarkKind kind;

  ClockFindings(RunContext context, PreparedLog log, List<Mark> marks, MarkKind kind) {
    this.context = context;
    this.log = log;
    this.marks = marks;
    this.kind = kind;
  }

  void tell(ClockJoin join) {
    switch (join.grounds()) {
      case NOTHING -> nothing();
      case ONE_EVENT -> oneEvent(join);
      case AGREEING_EVENTS -> agreeing(join);
      case DISAGREEING_EVENTS -> disagreeing(join);
    }
  }

  private void nothing() {
    String assumed =
        kind == MarkKind.ELAPSED && !context.study().marksOf(context.run().key()).isEmpty()
            ? "begun together"
            : "kept the same time";
    context
        .findings()
        .note(
            place(),
            "stopwatch and log show no event in common, so that nothing checks how their clocks"
                + " are joined: they are taken to have "
                + assumed,
            "mark “lit”, “pot on” and “flame out”");
  }

  private void oneEvent(ClockJoin join) {
    String event = names(join.agreeing());
    if (join.isFar()) {
      far(join, "only “" + event + "” shows it", "log and marks are not taken together");
      return;
    }
    context
        .findings()
        .note(
            place(),
            "only “"
                + event
                + "” was seen by both stopwatch and log, so that the joining of their clocks cannot"
                + " be checked"
                + moved(join),
            "mark “lit”, “pot on” and “flame out”");
  }

  private void agreeing(ClockJoin join) {
    if (join.isFar()) {
      far(join, shown(join), "the marks were moved by as much");
    } else if (join.shift() != 0) {
      context.findings().note(place(), apart(join) + ": " + shown(join) + moved(join), "");
    }
    if (!join.others().isEmpty() && !join.isFar()) {
      context
          .findings()
          .note(
              place(),
              "by "
                  + names(join.agreeing())
                  + " stopwatch and log go together, but not by "
                  + offsets(join.others()),
              "check these marks");
    }
  }

  private void disagreeing(ClockJoin join) {
    String problem =
        "the clocks of stopwatch and log do not go together in run "
            + run()
            + ": by "
            + offsets(join.others());
    String remedy = "check these marks, and that " + file() + " is the log of this run";
    if (join.isFar()) {
      context.findings().error(place(), problem + ", so that no figure takes both", remedy);
    } else {
      context.findings().warning(place(), problem, remedy);
    }
  }

  private void far(ClockJoin join, String shown, String consequence) {
    context
        .findings()
        .error(
            place(),
            "run "
                + run()
                + ": "
                + apart(join)
                + " ("
                + file()
                + "); "
                + shown
                + ", and "
                + consequence,
            IF_FAR);
  }

  private String shown(ClockJoin join) {
    return names(join.agreeing()) + " show it, to " + seconds(2 * join.uncertainty());
  }

  /** How far the clocks are apart, in words. */
  private String apart(ClockJoin join) {
    String size = seconds(Math.abs(join.offset()));
    boolean later = join.offset() > 0;
    return kind == MarkKind.ELAPSED
        ? "the stopwatch was started " + size + (later ? " after" : " before") + " its log begins"
        : "the clock of the stopwatch marks is "
            + size
            + (later ? " behind" : " ahead of")
            + " that of the"
            + " log";
  }

  private static String moved(ClockJoin join) {
    return join.shift() == 0
        ? ""
        : ", and the marks were moved "
            + seconds(Math.abs(join.shift()))
            + (join.shift() > 0 ? " later" : " earlier");
  }

  private static String offsets(List<CommonEvent> events) {
    return String.join(
        " and ",
        events.stream()
            .map(event -> "“" + event.name() + "” (off by " + signed(event.offset()) + ")")
            .toList());
  }

  private static String names(List<CommonEvent> events) {
    return String.join(" and ", events.stream().map(event -> event.name()).toList());
  }

  private static String signed(double seconds) {
    return Findings.words("%+.0f s", seconds).replace('-', '\u2212');
  }

  private static String seconds(double seconds) {
    return Findings.words("%.0f s", seconds);
  }

  private String run() {
    return context.run().key().name();
  }

  private String file() {
    return log.channels().isEmpty() ? "its log" : log.channels().get(0).place().file();
  }

  private Place place() {
    return marks.isEmpty() ? context.place(RunsSheet.LIT_AT) : marks.get(0).time().place();
  }
}
