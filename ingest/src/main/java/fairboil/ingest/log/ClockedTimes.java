package fairboil.ingest.log;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** Elapsed times, with a clock beside them that tells when the log was started. */
final class ClockedTimes implements TimeReader {

  private final TimeReader elapsed;
  private final TimeReader clock;
  private boolean started;
  private boolean told;

  ClockedTimes(TimeReader elapsed, TimeReader clock) {
    this.elapsed = elapsed;
    this.clock = clock;
  }

  // Only the first row's clock counts: it is the start of the elapsed times.
  @Override
  public boolean read(LineCells cells) {
    boolean read = elapsed.read(cells);
    if (read && !started) {
      started = true;
      told = clock.read(cells);
    }
    return read;
  }

  @Override
  public double seconds() {
    return elapsed.seconds();
  }

  @Override
  public TimeAxis.Kind kind() {
    return elapsed.kind();
  }

  @Override
  public double resolution() {
    return elapsed.resolution();
  }

  @Override
  public OptionalDouble startSecondOfDay() {
    return told ? clock.startSecondOfDay() : OptionalDouble.empty();
  }

  @Override
  public Optional<LocalDate> startDate() {
    return told ? clock.startDate() : Optional.empty();
  }
}
