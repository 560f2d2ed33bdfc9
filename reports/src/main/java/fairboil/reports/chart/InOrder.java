package fairboil.reports.chart;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;

/** Runs tasks on several threads and hands their results over in the order of the tasks. */
final class InOrder {

  private static final int AHEAD_PER_THREAD = 3;

  private InOrder() {}

  /** Takes a result. */
  interface Taker<T> {
    void take(T result) throws IOException;
  }

  static <T> void run(List<Supplier<T>> tasks, int threads, Taker<T> taker) throws IOException {
    if (threads <= 1 || tasks.size() <= 1) {
      for (Supplier<T> task : tasks) {
        taker.take(task.get());
      }
      return;
    }
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      ahead(tasks, threads * AHEAD_PER_THREAD, workers, taker);
    } finally {
      workers.shutdownNow();
    }
  }

  private static <T> void ahead(
      List<Supplier<T>> tasks, int most, ExecutorService workers, Taker<T> taker)
      throws IOException {
    Deque<Future<T>> running = new ArrayDeque<>();
    for (Supplier<T> task : tasks) {
      if (running.size() == most) {
        taker.take(result(running.remove()));
      }
      running.add(workers.submit(task::get));
    }
    while (!running.isEmpty()) {
      taker.take(result(running.remove()));
    }
  }

  private static <T> T result(Future<T> future) {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while drawing", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
