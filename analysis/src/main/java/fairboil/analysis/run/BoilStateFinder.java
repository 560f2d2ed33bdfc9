package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.RunsSheet;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether the water of a run boiled: by a person's word, by a mark, or as the log shows it. */
final class BoilStateFinder {

  /** Readings further apart than this may have a boil between them, s. */
  private static final double LONGEST_GAP_SECONDS = 120;

  /** So uncertain that one decimal is shown, K. */
  private static final double TENTHS_KELVIN = 0.2;

  private final RunContext context;
  private final PreparedLog log;
  private final EventTimes events;
  private final WaterShown water;
  private final Figure boilingPoint;

  BoilStateFinder(
      RunContext context,
      PreparedLog log,
      EventTimes events,
      WaterShown water,
      Figure boilingPoint) {
    this.context = context;
    this.log = log;
    this.events = events;
    this.water = water;
    this.boilingPoint = boilingPoint;
  }

  /** The state, with what a reader should know of it if the boil of the run counts. */
  BoilState find(Inclusion inclusion) {
    Optional<Outcome> told = context.value(RunsSheet.OUTCOME);
    told.ifPresent(this::check);
    BoilState state = state(told);
    if (state instanceof BoilState.NotSeen not && inclusion.includedForBoil()) {
      tell(not);
    }
    return state;
  }

  /** A mark or a plateau speaks louder than “went out”, which may have been later. */
  private BoilState state(Optional<Outcome> told) {
    if (saw() && told.filter(BoilStateFinder::saysNo).isEmpty()) {
      return new BoilState.Boiled(told);
    }
    Optional<BoilState> byWord = told.filter(word -> word != Outcome.STOPPED).map(BoilState::told);
    return byWord
        .or(() -> shown().map(how -> new BoilState.DidNotBoil(told, how)))
        .orElseGet(() -> new BoilState.NotSeen(told, whyNot(told)));
  }

  private static boolean saysNo(Outcome told) {
    return told == Outcome.DID_NOT_BOIL || told == Outcome.WOULD_NOT_LIGHT;
  }

  private boolean saw() {
    return water.seen().isPresent() || marked();
  }

  private boolean marked() {
    return events.at(Event.BOIL).isPresent();
  }

  /** How the log shows that the water never boiled; empty if it does not show that. */
  private Optional<Message> shown() {
    // Where a mark of boil is asked about, somebody may have seen it boil.
    if (events.isAsked(Event.BOIL) || !stayedBelow() || water.longestGap() > LONGEST_GAP_SECONDS) {
      return Optional.empty();
    }
    if (fireEnded()) {
      return Optional.of(BoilSays.FIRE_ENDED.with(celsius(water.hottest().orNaN())));
    }
    OptionalDouble level = water.levelled();
    return level.isEmpty()
        ? Optional.empty()
        : Optional.of(BoilSays.LEVELLED.with(celsius(level.getAsDouble())));
  }

  private static Argument celsius(double celsius) {
    return Argument.value(celsius, TENTHS_KELVIN, Dimension.TEMPERATURE);
  }

  private boolean stayedBelow() {
    return boilingPoint.isKnown()
        && water.hottest().isKnown()
        && water.hottest().orNaN() < boilingPoint.orNaN() - 2 * water.levelUncertainty();
  }

  /** Whether the log saw the water until the fire was out, with the pot on. */
  private boolean fireEnded() {
    OptionalDouble out = events.at(Event.FLAME_OUT);
    boolean placed = !events.isMarked(Event.FLAME_OUT) || events.apart().isEmpty();
    if (out.isEmpty() || !placed) {
      return false;
    }
    double potOff = events.at(Event.POT_OFF).orElse(Double.POSITIVE_INFINITY);
    return potOff >= out.getAsDouble() && water.until() >= out.getAsDouble() - log.interval();
  }

  private Message whyNot(Optional<Outcome> told) {
    Message mark = mark(BoilSays.UNREAD_MARK);
    Message unseen = RunSays.AND.with(Argument.clause(notInLog()), Argument.clause(mark));
    return told.isPresent() ? BoilSays.STOPPED_UNSEEN.with(Argument.clause(unseen)) : unseen;
  }

  private Message mark(Template none) {
    return events.isAsked(Event.BOIL)
        ? RunSays.IN_DOUBT.with(Argument.word(Event.BOIL.label()))
        : none.with();
  }

  private Message notInLog() {
    return water.whyNot().orElse(BoilSays.NO_BOIL_IN_LOG.with());
  }

  private void tell(BoilState.NotSeen not) {
    Place place = context.place(RunsSheet.OUTCOME);
    Message problem = BoilSays.UNSEEN.with(Argument.clause(not.reason()));
    Message remedy = BoilSays.TYPE_OUTCOME.with(RunSays.RUNS);
    if (isEmpty()) {
      context
          .findings()
          .error(
              context.run().row().place(),
              BoilSays.NOTHING_SEEN.with(),
              BoilSays.GIVE_LOG.with(
                  Argument.name(context.run().key().name()), RunSays.RUNS, RunSays.STOPWATCH));
    } else if (isAboutWater()) {
      context.findings().warning(place, problem, remedy);
    } else {
      context.findings().note(place, problem, remedy);
    }
  }

  private boolean isEmpty() {
    return log.equals(PreparedLog.NONE) && events.timeline().events().isEmpty();
  }

  /** A burn for its flame alone has nothing to boil. */
  private boolean isAboutWater() {
    return context.value(RunsSheet.WATER).isPresent()
        || context.value(RunsSheet.POT_WITH_WATER).isPresent()
        || log.channel(Role.WATER).isPresent()
        || events.at(Event.POT_ON).isPresent();
  }

  private void check(Outcome told) {
    Place place = context.place(RunsSheet.OUTCOME);
    if (told == Outcome.BOILED && !saw() && !log.equals(PreparedLog.UNREAD)) {
      context
          .findings()
          .warning(
              place,
              BoilSays.SAID_BOILED.with(
                  RunSays.RUNS,
                  Argument.clause(mark(BoilSays.NO_MARK)),
                  Argument.clause(notInLog())),
              BoilSays.MARK_IT.with(RunSays.STOPWATCH));
    } else if (told != Outcome.BOILED && saw()) {
      context
          .findings()
          .warning(
              place,
              BoilSays.SAID_OTHERWISE.with(
                  RunSays.RUNS,
                  Argument.cell(told.label()),
                  Argument.clause((marked() ? BoilSays.WAS_MARKED : BoilSays.LOG_SHOWS_IT).with())),
              BoilSays.TYPE_BOILED.with());
    }
  }
}
