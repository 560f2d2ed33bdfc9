package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.trace.Boil;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Place;
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

  private static final String BOILS_TAKE = ", but a boil takes 1 to 60 minutes";

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
    String problem =
        seconds <= 0
            ? "the boil is marked before " + start.label()
            : "the boil is marked "
                + spell(seconds)
                + " after "
                + start.label()
                + BOILS_TAKE
                + ", so the mark was set aside";
    context
        .findings()
        .error(
            boilMark(),
            problem,
            "check the times of this run, type them as minutes and seconds, such as 8m15s, and see"
                + " at which event the stopwatch was started");
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
    String when =
        "the log shows the boil "
            + (seconds < 0 ? spell(-seconds) + " before " : spell(seconds) + " after ")
            + start.label()
            + BOILS_TAKE;
    context
        .findings()
        .error(
            log.channel(Role.WATER).orElseThrow().place(),
            when + ", so this boil is not used",
            "check that this is the log of run "
                + context.run().key().name()
                + ", the times of lit and pot on, and where the log begins; “log from” in runs.csv"
                + " leaves out what was logged before");
    return water.asking(when);
  }

  /** The time from lighting to the boil, if it is one that a boil takes. */
  Figure litToBoil(Figure time) {
    if (!time.isKnown() || holds(time.orNaN())) {
      return time;
    }
    String problem = "the boil came " + spell(time.orNaN()) + " after lit";
    context
        .findings()
        .error(
            litPlace(),
            problem + BOILS_TAKE + ", so the time from lit to boil is not used",
            "check when this run was lit");
    return Figure.unknown(problem + BOILS_TAKE);
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

  private static String spell(double seconds) {
    long whole = Math.round(seconds);
    if (whole >= 3600) {
      return whole / 3600 + " h " + whole % 3600 / 60 + " min";
    }
    return whole >= 60 ? whole / 60 + " min " + whole % 60 + " s" : whole + " s";
  }
}
