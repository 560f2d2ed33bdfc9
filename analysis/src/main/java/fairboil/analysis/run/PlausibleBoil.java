package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.trace.Boil;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Mark;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a boil came as soon as boils come on such stoves: 1 to 60 minutes after lighting or
 * setting the pot on. One that did not is asked about and used in nothing: most likely minutes were
 * read as hours, or a mark belongs to another burn.
 */
final class PlausibleBoil {

  /** The soonest, s: a judgement. A litre in 1 minute would take over 5 kW. */
  static final double SOONEST = 60;

  /** The latest, s: a judgement; minutes read as hours come out later. */
  static final double LATEST = 3600;

  /** So uncertain that no decimals are shown, s. */
  private static final double WHOLE_SECONDS = 2;

  private static final Template SET_ASIDE =
      Template.of(
          "the boil is marked {value} after {word}, but a boil takes {range}, so the mark was set"
              + " aside");
  private static final Template CHECK_TIMES =
      Template.of(
          "check the times of this run, type them as minutes and seconds, such as 8m15s, and see at"
              + " which event the stopwatch was started");
  private static final Template SHOWN_BEFORE =
      Template.of("the log shows the boil {value} before {word}, but a boil takes {range}");
  private static final Template SHOWN_AFTER =
      Template.of("the log shows the boil {value} after {word}, but a boil takes {range}");
  private static final Template NOT_USED = Template.of("{clause}, so this boil is not used");
  private static final Template CHECK_LOG =
      Template.of(
          "check that this is the log of run {name}, the times of lit and pot on, and where the log"
              + " begins; in the column log from of {sheet}, type from where on it is of this run");
  private static final Template AFTER_LIT =
      Template.of("the boil came {value} after lit, but a boil takes {range}");
  private static final Template TIME_NOT_USED =
      Template.of("{clause}, so the time from lit to boil is not used");
  private static final Template CHECK_LIT = Template.of("check when this run was lit");

  private final RunContext context;
  private final PreparedLog log;

  PlausibleBoil(RunContext context, PreparedLog log) {
    this.context = context;
    this.log = log;
  }

  private static boolean holds(double seconds) {
    return seconds >= SOONEST && seconds <= LATEST;
  }

  /** The events, without a boil that was marked too soon or too late. */
  EventTimes marks(EventTimes events) {
    OptionalDouble boil = events.at(Event.BOIL);
    Event start = events.boilTimeStart();
    boolean comparable = events.apart().isEmpty() || events.isMarked(start);
    if (boil.isEmpty() || events.whyNoStart().isPresent() || !comparable) {
      return events;
    }
    double seconds = boil.getAsDouble() - events.at(start).orElseThrow();
    if (holds(seconds)) {
      return events;
    }
    Argument label = Argument.word(start.label());
    Message problem =
        seconds <= 0
            ? RunSays.BOIL_TOO_EARLY.with(label)
            : SET_ASIDE.with(seconds(seconds), label, boilsTake());
    context.findings().error(boilMark(), problem, CHECK_TIMES.with());
    return events.asking(Event.BOIL);
  }

  /** What the water shows, without a boil too soon or too late. */
  WaterShown shown(EventTimes events, WaterShown water) {
    Event start = events.boilTimeStart();
    boolean comparable = events.apart().isEmpty() || !events.isMarked(start);
    Optional<Boil.Seen> seen = water.seen();
    if (seen.isEmpty() || events.whyNoStart().isPresent() || !comparable) {
      return water;
    }
    double seconds = seen.get().at() - events.at(start).orElseThrow();
    if (holds(seconds)) {
      return water;
    }
    Message when =
        (seconds < 0 ? SHOWN_BEFORE : SHOWN_AFTER)
            .with(seconds(Math.abs(seconds)), Argument.word(start.label()), boilsTake());
    context
        .findings()
        .error(
            log.channel(Role.WATER).orElseThrow().place(),
            NOT_USED.with(Argument.clause(when)),
            CHECK_LOG.with(Argument.name(context.run().key().name()), RunSays.RUNS));
    return water.asking(when);
  }

  /** The time from lighting to the boil, if it is one that a boil takes. */
  Figure litToBoil(Figure time) {
    if (!time.isKnown() || holds(time.orNaN())) {
      return time;
    }
    Message problem = AFTER_LIT.with(seconds(time.orNaN()), boilsTake());
    context
        .findings()
        .error(litPlace(), TIME_NOT_USED.with(Argument.clause(problem)), CHECK_LIT.with());
    return Figure.unknown(problem);
  }

  /** The cell in which the boil was marked, else the row of the run. */
  Place boilMark() {
    return place(Event.BOIL);
  }

  private Place litPlace() {
    return place(Event.LIT);
  }

  private Place place(Event event) {
    for (Mark mark : context.study().marksOf(context.run().key())) {
      if (mark.event().filter(event::equals).isPresent()) {
        return mark.time().place();
      }
    }
    return context.run().row().place();
  }

  private static Argument seconds(double seconds) {
    return Argument.value(seconds, WHOLE_SECONDS, Dimension.DURATION);
  }

  private static Argument boilsTake() {
    return Argument.range(SOONEST, LATEST, WHOLE_SECONDS, Dimension.DURATION);
  }
}
