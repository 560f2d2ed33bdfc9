package fairboil.ingest.log;

import java.util.Optional;

/**
 * How a log writes moments.
 *
 * @param kind how the log tells time
 * @param order the order of the parts of its dates; empty if it writes none
 * @param style what a time of two parts means
 * @param offsets whether the moments carry an offset from UTC
 * @param trust what of the moments is to be believed beyond their differences
 */
record StampFormat(
    TimeAxis.Kind kind, Optional<DateOrder> order, ClockStyle style, Offsets offsets, Trust trust) {

  /** Whether the moments carry an offset from UTC. */
  enum Offsets {
    NONE,
    IN_EVERY_CELL
  }

  /** What of the moments is to be believed beyond their differences. */
  enum Trust {
    DATE_AND_CLOCK,
    /** The order of day and month is not known. */
    CLOCK,
    /** The clock was never set, runs in UTC, or counts from a start. */
    NOTHING
  }
}
