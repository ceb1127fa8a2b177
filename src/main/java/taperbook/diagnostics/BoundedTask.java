package taperbook.diagnostics;

import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import taperbook.i18n.Texts;

/**
 * Runs work on untrusted input on a thread of its own, with limits of time and memory. Work that
 * exceeds a limit is interrupted and abandoned: libraries may ignore the interrupt, but the thread
 * ends with the process.
 */
public final class BoundedTask {
  /** Memory is limited by that of the process alone. */
  public static final long ANY_MEMORY = Long.MAX_VALUE;

  private static final int POLL_MILLISECONDS = 20;
  private static final long MEBIBYTE = 1L << 20;

  private BoundedTask() {}

  /** Work that returns a result. */
  public interface Work<T, E extends Exception> {
    T run() throws E;
  }

  /** Work exceeded a limit. */
  public static final class LimitExceeded extends Exception {
    private static final long serialVersionUID = 1;
    private final String limit;

    LimitExceeded(String limit) {
      super(limit);
      this.limit = limit;
    }

    /** Returns the limit, such as {@code 120 seconds}. */
    public String limit() {
      return limit;
    }
  }

  /**
   * Runs work and returns its result.
   *
   * @param threads creates the thread, with its name and stack size
   * @param seconds time limit
   * @param bytes limit of the memory that the work adds, after a collection, to what the process
   *     has in use at the start
   * @throws LimitExceeded if the work exceeds a limit
   * @throws E if the work throws it; unchecked exceptions and errors are rethrown as well
   */
  public static <T, E extends Exception> T within(
      int seconds, long bytes, ThreadFactory threads, Work<T, E> work) throws LimitExceeded, E {
    FutureTask<T> task = new FutureTask<>(work::run);
    Thread thread = threads.newThread(task);
    thread.setDaemon(true);
    long usedBefore = bytes == ANY_MEMORY ? 0 : usedAfterCollection();
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    thread.start();
    try {
      while (true) {
        try {
          return task.get(POLL_MILLISECONDS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
          if (System.nanoTime() > end) {
            throw new LimitExceeded(
                Texts.count(
                    seconds, "command.bounded_task.second", "command.bounded_task.seconds"));
          }
          // Garbage may account for most of the memory in use.
          if (used() - usedBefore > bytes && usedAfterCollection() - usedBefore > bytes) {
            throw new LimitExceeded(mebibytesOfMemory(bytes));
          }
        }
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException("interrupted while other work is carried out", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      @SuppressWarnings("unchecked") // Work throws no checked exception but E
      E failure = (E) Objects.requireNonNull(e.getCause());
      throw failure;
    } finally {
      task.cancel(true);
    }
  }

  /** Returns an amount of memory as a limit, such as {@code 1024 MiB of memory}. */
  public static String mebibytesOfMemory(long bytes) {
    return Texts.of("command.bounded_task.mib_of_memory", bytes / MEBIBYTE);
  }

  private static long usedAfterCollection() {
    System.gc();
    return used();
  }

  private static long used() {
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
