package fairboil.analysis.run;

import fairboil.analysis.clock.ClockJoin;
import fairboil.analysis.clock.CommonEvent;
import fairboil.analysis.run.StopwatchZero.MarkKind;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.RunsSheet;
import java.util.List;

/** What a reader should know of the joining of the clocks of a run. */
final class ClockFindings {

  /** So uncertain that no decimals are shown, s. */
  private static final double WHOLE_SECONDS = 2;

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
    Template assumed =
        kind == MarkKind.ELAPSED && !context.study().marksOf(context.run().key()).isEmpty()
            ? ClockSays.BEGAN_TOGETHER
            : ClockSays.SAME_TIME;
    context.findings().note(place(), assumed.with(), ClockSays.TIME_THREE.with());
  }

  private void oneEvent(ClockJoin join) {
    Argument event = name(join.agreeing().get(0));
    if (join.isFar()) {
      Message problem =
          ClockSays.FAR_BY_ONE.with(run(), Argument.clause(apart(join)), file(), event);
      context.findings().error(place(), problem, ClockSays.IF_FAR.with(RunSays.RUNS));
      return;
    }
    context
        .findings()
        .note(
            place(),
            ClockSays.ONE_EVENT.with(event, Argument.clause(moved(join))),
            ClockSays.TIME_THREE.with());
  }

  private void agreeing(ClockJoin join) {
    Argument apart = Argument.clause(apart(join));
    Argument names = names(join.agreeing());
    Argument within = seconds(2 * join.uncertainty());
    if (join.isFar()) {
      Message problem = ClockSays.FAR.with(run(), apart, file(), names, within);
      context.findings().error(place(), problem, ClockSays.IF_FAR.with(RunSays.RUNS));
    } else if (join.shift() != 0) {
      Message problem = ClockSays.OFF.with(apart, names, within, Argument.clause(moved(join)));
      context.findings().note(place(), problem, Message.NONE);
    }
    if (!join.others().isEmpty() && !join.isFar()) {
      context
          .findings()
          .note(
              place(),
              ClockSays.BUT_NOT_BY.with(names, offsets(join.others())),
              ClockSays.CHECK_MARKS.with());
    }
  }

  private void disagreeing(ClockJoin join) {
    Argument consequence =
        Argument.clause(join.isFar() ? ClockSays.BOTH_UNUSED.with() : Message.NONE);
    Message problem = ClockSays.DO_NOT_FIT.with(run(), offsets(join.others()), consequence);
    Message remedy = ClockSays.CHECK_BOTH.with(file());
    if (join.isFar()) {
      context.findings().error(place(), problem, remedy);
    } else {
      context.findings().warning(place(), problem, remedy);
    }
  }

  /** How far the clocks are apart. */
  private Message apart(ClockJoin join) {
    Argument size = seconds(Math.abs(join.offset()));
    boolean later = join.offset() > 0;
    if (kind == MarkKind.ELAPSED) {
      return (later ? ClockSays.STARTED_AFTER : ClockSays.STARTED_BEFORE).with(size);
    }
    return (later ? ClockSays.BEHIND : ClockSays.AHEAD).with(size);
  }

  private static Message moved(ClockJoin join) {
    return join.shift() == 0
        ? Message.NONE
        : (join.shift() > 0 ? ClockSays.MOVED_LATER : ClockSays.MOVED_EARLIER)
            .with(seconds(Math.abs(join.shift())));
  }

  private static Argument offsets(List<CommonEvent> events) {
    return Argument.allOf(events.stream().map(ClockFindings::offset).toList());
  }

  private static Argument offset(CommonEvent event) {
    Template way = event.offset() > 0 ? ClockSays.LATER : ClockSays.EARLIER;
    return Argument.clause(way.with(name(event), seconds(Math.abs(event.offset()))));
  }

  private static Argument names(List<CommonEvent> events) {
    return Argument.allOf(events.stream().map(ClockFindings::name).toList());
  }

  private static Argument name(CommonEvent event) {
    return Argument.cell(event.name());
  }

  private static Argument seconds(double seconds) {
    return Argument.value(seconds, WHOLE_SECONDS, Dimension.DURATION);
  }

  private Argument run() {
    return Argument.name(context.run().key().name());
  }

  private Argument file() {
    return Argument.clause(
        log.channels().isEmpty()
            ? ClockSays.ITS_LOG.with()
            : ClockSays.FILE.with(Argument.name(log.channels().get(0).place().file())));
  }

  private Place place() {
    return marks.isEmpty() ? context.place(RunsSheet.LIT_AT) : marks.get(0).time().place();
  }
}
