package fairboil.analysis.run;

import fairboil.ingest.choice.Event;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The events of a run in the order of time.
 *
 * @param events the events; unmodifiable, sorted by time
 */
public record Timeline(List<TimedEvent> events) {

  /** Copies the events. */
  public Timeline {
    events = List.copyOf(events);
  }

  /** When the event first happened, in seconds on the run's time line. */
  public OptionalDouble at(Event event) {
    return events.stream()
        .filter(timed -> timed.event().filter(event::equals).isPresent())
        .mapToDouble(TimedEvent::seconds)
        .findFirst();
  }

  /** When the boil time starts: the later of lit and pot on, or whichever of them is known. */
  public OptionalDouble boilTimeStart() {
    OptionalDouble lit = at(Event.LIT);
    OptionalDouble potOn = at(Event.POT_ON);
    if (lit.isEmpty() || potOn.isEmpty()) {
      return lit.isPresent() ? lit : potOn;
    }
    return OptionalDouble.of(Math.max(lit.getAsDouble(), potOn.getAsDouble()));
  }
}
