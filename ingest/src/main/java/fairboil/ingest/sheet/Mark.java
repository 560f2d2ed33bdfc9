package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import java.util.Optional;

/**
 * One stopwatch entry: an event and its time.
 *
 * @param run the run
 * @param event the event, if it is one that has a meaning here
 * @param text the event as written
 * @param time when it happened
 * @param by who saw it, if that was told
 */
public record Mark(
    Key run, Optional<Event> event, String text, Given<ClockTime> time, Optional<String> by) {}
