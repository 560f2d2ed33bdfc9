package fairboil.analysis;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Works on several things at once and gives the results in the order of the things: the same on one
 * processor as on many. At any time no more things are being worked on than there are workers.
 */
final class InOrder {

  private InOrder() {}

  /**
   * Applies the work to each thing.
   *
   * @param workers how many may work at once, at least 1
   * @return the results, in the order of the things
   */
  static <T, R> List<R> map(List<T> things, int workers, Function<T, R> work) {
    if (workers == 1 || things.size() < 2) {
      return things.stream().map(work).toList();
    }
    ExecutorService pool = Executors.newFixedThreadPool(Math.min(workers, things.size()));
    try {
      List<Callable<R>> tasks =
          things.stream().<Callable<R>>map(thing -> () -> work.apply(thing)).toList();
      return results(pool.invokeAll(tasks).stream());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the work was interrupted", interrupted);
    } finally {
      pool.shutdownNow();
    }
  }

  private static <R> List<R> results(Stream<Future<R>> done) {
    return done.map(InOrder::result).toList();
  }

  private static <R> R result(Future<R> done) {
    try {
      return done.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the work was interrupted", interrupted);
    } catch (ExecutionException failed) {
      throw unchecked(failed.getCause());
    }
  }

  private static RuntimeException unchecked(Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException runtime
        ? runtime
        : new IllegalStateException("the work failed", cause);
  }
}
