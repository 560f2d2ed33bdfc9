package fairboil.ingest.log;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import tech.tablesaw.api.DoubleColumn;

/**
 * When each reading of a log was taken.
 *
 * @param seconds seconds since the first reading kept, never decreasing, none missing
 * @param kind how the log told time
 * @param startSecondOfDay local time of day of the first reading, in seconds since midnight, where
 *     the log told it
 * @param startDate local date of the first reading, where the log told it
 * @param interval the usual time between two readings (median), in seconds; 0 for fewer than two
 * @param resolution the size of one step of the last digit of the times as written, in seconds
 */
public record TimeAxis(
    DoubleColumn seconds,
    Kind kind,
    OptionalDouble startSecondOfDay,
    Optional<LocalDate> startDate,
    double interval,
    double resolution) {

  /** How a log tells time. */
  public enum Kind {
    /** Since something started: the logger, its recording, or the age of computers. */
    ELAPSED,
    /** Time of day. */
    TIME_OF_DAY,
    /** Date and time of day. */
    DATE_TIME
  }

  /** How many readings there are. */
  public int size() {
    return seconds.size();
  }
}
