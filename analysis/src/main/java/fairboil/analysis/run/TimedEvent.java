package fairboil.analysis.run;

import fairboil.ingest.choice.Event;
import java.util.Objects;
import java.util.Optional;

/**
 * An event on the time line of a run.
 *
 * @param event the event, if it is one that has a meaning here
 * @param text what people call it
 * @param seconds when, in seconds on the run's time line: from the first reading of its log, or
 *     without a log from its first mark
 * @param seenBy who or what saw it
 */
public record TimedEvent(Optional<Event> event, String text, double seconds, SeenBy seenBy) {

  /** Checks that all parts are there. */
  public TimedEvent {
    Objects.requireNonNull(event, "event");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(seenBy, "seenBy");
  }

  /** Who or what saw an event. */
  public enum SeenBy {
    /** A person with a stopwatch. */
    STOPWATCH,
    /** The trace shows it. */
    TRACE
  }
}
