package fairboil.ingest.log;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the time of a row. Keeps count of what it read; for one thread and one log. */
interface TimeReader {

  /** Reads the time of a row; false if its cells hold none. */
  boolean read(LineCells cells);

  /** The time of the row read last, in seconds since the first row read. */
  double seconds();

  /** How the log tells time. */
  TimeAxis.Kind kind();

  /** One step of the last digit written so far, in seconds. */
  double resolution();

  /** The local time of day of the first row read, in seconds since midnight, where it is told. */
  OptionalDouble startSecondOfDay();

  /** The local date of the first row read, where it is told. */
  Optional<LocalDate> startDate();
}
