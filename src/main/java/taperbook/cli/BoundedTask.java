package taperbook.cli;

import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Carries out work on what a stranger wrote, with one bound on its time and one on its memory. Work
 * that reaches one of them is asked to end and left behind: libraries need not listen, but the
 * process ends and takes the thread with it.
 */
public final class BoundedTask {
  private static final long STACK_BYTES = 16L << 20;
  private static final int MILLISECONDS_BETWEEN_LOOKS = 20;
  private static final long MEBIBYTE = 1L << 20;

  private BoundedTask() {}

  /** Work reached a bound. */
  public static final class TooMuch extends Exception {
    private static final long serialVersionUID = 1;
    private final String words;

    TooMuch(String words) {
      super(words);
      this.words = words;
    }

    /** The bound, such as {@code 120 seconds}. */
    public String words() {
      return words;
    }
  }

  /** The thread that does the work, and what came of it. */
  private static final class Worker<T> extends Thread {
    private final Supplier<T> work;
    private @Nullable T result;
    private @Nullable Throwable failure;

    Worker(Supplier<T> work) {
      super(null, null, "bounded work", STACK_BYTES);
      this.work = work;
      setDaemon(true);
    }

    @Override
    public void run() {
      try {
        result = work.get();
      } catch (RuntimeException | Error e) {
        failure = e;
      }
    }
  }

  /**
   * Returns what work gives.
   *
   * @param seconds time that it may take
   * @param bytes memory that may be in use meanwhile, after a collection
   * @throws TooMuch if it takes more of either
   */
  public static <T> T within(int seconds, long bytes, Supplier<T> work) throws TooMuch {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    Worker<T> worker = new Worker<>(work);
    worker.start();
    try {
      while (worker.isAlive()) {
        worker.join(MILLISECONDS_BETWEEN_LOOKS);
        if (worker.isAlive() && System.nanoTime() > end) {
          worker.interrupt();
          throw new TooMuch(seconds == 1 ? "1 second" : seconds + " seconds");
        }
        if (worker.isAlive() && used() > bytes) {
          // What is no longer needed may be most of it.
          System.gc();
          if (used() > bytes) {
            worker.interrupt();
            throw new TooMuch(bytes / MEBIBYTE + " MiB of memory");
          }
        }
      }
    } catch (InterruptedException e) {
      worker.interrupt();
      throw new IllegalStateException("interrupted while other work is carried out", e);
    }
    if (worker.failure instanceof OutOfMemoryError) {
      throw new TooMuch(Runtime.getRuntime().maxMemory() / MEBIBYTE + " MiB of memory");
    }
    if (worker.failure instanceof RuntimeException e) {
      throw e;
    }
    if (worker.failure instanceof Error e) {
      throw e;
    }
    T result = worker.result;
    if (result == null) {
      throw new IllegalStateException("work that gives nothing");
    }
    return result;
  }

  private static long used() {
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
