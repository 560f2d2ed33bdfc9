package fairboil.analysis;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Works on several things at once and hands the results over in the order of the things: the same
 * on one processor as on many. No more things are being worked on than there are workers, and only
 * a few finished ones wait for their turn.
 */
public final class InOrder {

  private static final int AHEAD_PER_WORKER = 3;

  private InOrder() {}

  /**
   * Takes a result.
   *
   * @param <R> the result
   * @param <X> what taking it may throw
   */
  @FunctionalInterface
  public interface Taker<R, X extends Exception> {
    /** Takes the next result; called by the thread that asked for the work. */
    void take(R result) throws X;
  }

  /**
   * Applies the work to each thing and hands each result over.
   *
   * @param things what to work on
   * @param workers how many may work at once, at least 1
   * @param work called from several threads at once, for different things; what it throws,
   *     unchecked, reaches the caller
   * @param taker takes the results, in the order of the things
   * @throws X if the taker does
   */
  public static <T, R, X extends Exception> void each(
      List<T> things, int workers, Function<? super T, ? extends R> work, Taker<? super R, X> taker)
      throws X {
    if (workers == 1 || things.size() < 2) {
      for (T thing : things) {
        taker.take(work.apply(thing));
      }
      return;
    }
    ExecutorService pool = Executors.newFixedThreadPool(Math.min(workers, things.size()));
    try {
      Deque<Future<? extends R>> running = new ArrayDeque<>();
      for (T thing : things) {
        if (running.size() == workers * AHEAD_PER_WORKER) {
          taker.take(result(running.remove()));
        }
        running.add(pool.submit(() -> work.apply(thing)));
      }
      while (!running.isEmpty()) {
        taker.take(result(running.remove()));
      }
    } finally {
      pool.shutdownNow();
    }
  }

  /**
   * Applies the work to each thing.
   *
   * @return the results, in the order of the things; unmodifiable
   */
  static <T, R> List<R> map(List<T> things, int workers, Function<T, R> work) {
    List<R> results = new ArrayList<>(things.size());
    each(things, workers, work, results::add);
    return Collections.unmodifiableList(results);
  }

  private static <R> R result(Future<R> done) {
    try {
      return done.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the work was interrupted", interrupted);
    } catch (ExecutionException failed) {
      throw unchecked(failed);
    }
  }

  private static RuntimeException unchecked(ExecutionException failed) {
    Throwable cause = failed.getCause();
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException runtime
        ? runtime
        : new IllegalStateException("the work failed", cause);
  }
}
