package fairboil.ingest.log;

import java.util.concurrent.locks.ReentrantLock;

/** Lets one large log at a time be read, so that several together do not exhaust the memory. */
final class LargeLogs {

  /** A log with more readings than this is large. */
  static final int FROM = 500_000;

  private final ReentrantLock turn = new ReentrantLock();

  /** Waits for this thread's turn. */
  void enter() {
    if (!turn.isHeldByCurrentThread()) {
      turn.lock();
    }
  }

  /** Ends this thread's turn, if it is its turn. */
  void leave() {
    if (turn.isHeldByCurrentThread()) {
      turn.unlock();
    }
  }
}
