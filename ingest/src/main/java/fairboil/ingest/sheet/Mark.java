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
 * @param time when it happened; {@link ClockTime.Asked} if that cannot be told from what stands
 *     there
 * @param by who saw it, if that was told
 */
public record Mark(
    Key run, Optional<Event> event, String text, Given<ClockTime> time, Optional<String> by) {

  /** Whether its time is asked about, so that nothing may use it. */
  public boolean isAsked() {
    return time.value() instanceof ClockTime.Asked;
  }
}
