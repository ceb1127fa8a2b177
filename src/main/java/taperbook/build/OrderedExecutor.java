package taperbook.build;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import taperbook.workspace.StoppedException;

/**
 * Processes items concurrently, with one thread per processor, and delivers the results
 * sequentially in the order of the items. The number of items in progress is bounded, so that
 * memory use does not grow with the number of items.
 */
final class OrderedExecutor {
  private static final int UNDER_WAY_FOR_EACH_THREAD = 2;

  private OrderedExecutor() {}

  /**
   * Processes each item and delivers each result.
   *
   * @param work called on several threads concurrently; must not change shared state
   * @param take called on the calling thread, in the order of the items
   */
  static <A, B> void each(List<A> items, Function<A, B> work, Consumer<B> take) {
    int threads = Math.min(Runtime.getRuntime().availableProcessors(), items.size());
    if (threads < 2) {
      items.forEach(item -> take.accept(work.apply(item)));
      return;
    }
    ExecutorService pool = Executors.newFixedThreadPool(threads, OrderedExecutor::thread);
    try {
      Deque<Future<B>> underWay = new ArrayDeque<>();
      for (A item : items) {
        if (underWay.size() == threads * UNDER_WAY_FOR_EACH_THREAD) {
          take.accept(outcome(underWay.remove()));
        }
        underWay.add(pool.submit(() -> work.apply(item)));
      }
      while (!underWay.isEmpty()) {
        take.accept(outcome(underWay.remove()));
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "session");
    thread.setDaemon(true);
    return thread;
  }

  /** Returns the result of the work, or rethrows its exception. */
  private static <B> B outcome(Future<B> future) {
    try {
      return future.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      if (e.getCause() instanceof Error failure) {
        throw failure;
      }
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new StoppedException("interrupted while sessions are read", e);
    }
  }
}
