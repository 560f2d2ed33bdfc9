package fairboil.analysis;

import fairboil.ingest.log.LogOpener;
import fairboil.ingest.sheet.Run;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * Lets only so much of logs be worked on at once, and a large one alone, so that several together
 * do not exhaust the memory. Of results it changes nothing.
 */
final class LogTurns {

  private static final int PLACES = 32;
  private static final long BYTES_A_PLACE = 1 << 20;

  private final Semaphore places = new Semaphore(PLACES, true);
  private final LogOpener logs;

  LogTurns(LogOpener logs) {
    this.logs = logs;
  }

  /** Does the work on the log of a run when there is room for it. */
  <R> R with(Run run, Supplier<R> work) {
    int needed = (int) Math.min(PLACES, 1 + logs.bytes(run) / BYTES_A_PLACE);
    places.acquireUninterruptibly(needed);
    try {
      return work.get();
    } finally {
      places.release(needed);
    }
  }
}
