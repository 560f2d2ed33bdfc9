package fairboil.ingest.quantity;

import java.time.LocalDate;
import java.util.Optional;

/** A moment as a stopwatch or a clock tells it. */
public sealed interface ClockTime {

  /** The size of one step of the last digit written, in seconds. */
  double resolution();

  /**
   * Time on a stopwatch since it was started.
   *
   * @param seconds elapsed seconds; negative is legal in logs that start before the event
   * @param resolution one step of the last digit written, in seconds
   */
  record Elapsed(double seconds, double resolution) implements ClockTime {}

  /**
   * Local time on a clock, without a zone: only differences are used.
   *
   * @param secondOfDay seconds since local midnight, from 0 to below 86,400
   * @param date the date, where one was written
   * @param resolution one step of the last digit written, in seconds
   */
  record TimeOfDay(double secondOfDay, Optional<LocalDate> date, double resolution)
      implements ClockTime {}

  /** Something was written, but it could mean several times: it is asked about and not used. */
  record Asked() implements ClockTime {

    @Override
    public double resolution() {
      return 0;
    }
  }
}
