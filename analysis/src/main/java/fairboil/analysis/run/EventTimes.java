package fairboil.analysis.run;

import fairboil.ingest.choice.Event;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The events of a run with how well their times are known.
 *
 * @param timeline the events
 * @param uncertainties standard uncertainty of each event's time as marked, s
 * @param joining standard uncertainty of the joining of the marks to the log, s
 * @param apart why times of marks and log may not be taken together; empty if they may
 */
record EventTimes(
    Timeline timeline, Map<Event, Double> uncertainties, double joining, Optional<String> apart) {

  EventTimes {
    uncertainties = uncertainties.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(uncertainties));
  }

  OptionalDouble at(Event event) {
    return timeline.at(event);
  }

  double uncertainty(Event event) {
    return uncertainties.getOrDefault(event, 0.0);
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
