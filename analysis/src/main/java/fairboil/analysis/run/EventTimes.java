package fairboil.analysis.run;

import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The events of a run with how well their times are known.
 *
 * @param timeline the events
 * @param uncertainties standard uncertainty of each event's time as marked, s
 * @param joining standard uncertainty of the joining of the marks to the log, s
 * @param apart why times of marks and log may not be taken together; empty if they may
 * @param asked events that were marked, but whose marks are asked about and used in nothing
 */
record EventTimes(
    Timeline timeline,
    Map<Event, Double> uncertainties,
    double joining,
    Optional<Message> apart,
    Set<Event> asked) {

  private static final Template NO_START =
      Template.of("neither lighting nor setting the pot on was marked or seen");

  EventTimes {
    uncertainties = uncertainties.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(uncertainties));
    asked = Set.copyOf(asked);
  }

  OptionalDouble at(Event event) {
    return timeline.at(event);
  }

  double uncertainty(Event event) {
    return uncertainties.getOrDefault(event, 0.0);
  }

  /** Whether the event was marked, but its mark is asked about and nothing else tells it. */
  boolean isAsked(Event event) {
    return asked.contains(event) && at(event).isEmpty();
  }

  /**
   * Why it is not known when the boil time starts; empty if it is. Lighting alone does not tell it
   * if the pot was set on at a time that is asked about.
   */
  Optional<Message> whyNoStart() {
    if (isAsked(Event.POT_ON)) {
      return Optional.of(RunSays.IN_DOUBT.with(Argument.word(Event.POT_ON.label())));
    }
    if (timeline.boilTimeStart().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        isAsked(Event.LIT)
            ? RunSays.IN_DOUBT.with(Argument.word(Event.LIT.label()))
            : NO_START.with());
  }

  /** The same, without the marks of an event, which are asked about. */
  EventTimes asking(Event event) {
    List<TimedEvent> others = new ArrayList<>(timeline.events());
    others.removeIf(
        timed ->
            timed.event().filter(event::equals).isPresent()
                && timed.seenBy() == TimedEvent.SeenBy.STOPWATCH);
    Set<Event> more = EnumSet.of(event);
    more.addAll(asked);
    return new EventTimes(new Timeline(others), uncertainties, joining, apart, more);
  }

  /** The event from which the boil time runs; only where one of the two is known. */
  Event boilTimeStart() {
    OptionalDouble lit = at(Event.LIT);
    OptionalDouble potOn = at(Event.POT_ON);
    boolean later = potOn.isPresent() && (lit.isEmpty() || potOn.getAsDouble() > lit.getAsDouble());
    return later ? Event.POT_ON : Event.LIT;
  }

  /** Whether a person saw the event; the trace may have shown it instead. */
  boolean isMarked(Event event) {
    return timeline.events().stream()
        .anyMatch(
            timed ->
                timed.event().filter(event::equals).isPresent()
                    && timed.seenBy() == TimedEvent.SeenBy.STOPWATCH);
  }
}
