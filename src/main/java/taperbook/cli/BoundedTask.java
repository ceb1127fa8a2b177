package taperbook.cli;

import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import taperbook.i18n.Texts;

/**
 * Runs work on untrusted input with a time limit and a memory limit. Work that exceeds a limit is
 * interrupted and abandoned: libraries may ignore the interrupt, but the thread ends with the
 * process.
 */
public final class BoundedTask {
  private static final long STACK_BYTES = 16L << 20;
  private static final int MILLISECONDS_BETWEEN_LOOKS = 20;
  private static final long MEBIBYTE = 1L << 20;

  private BoundedTask() {}

  /** Work exceeded a limit. */
  public static final class TooMuch extends Exception {
    private static final long serialVersionUID = 1;
    private final String words;

    TooMuch(String words) {
      super(words);
      this.words = words;
    }

    /** Returns the limit, such as {@code 120 seconds}. */
    public String words() {
      return words;
    }
  }

  /** The thread that does the work, with its result. */
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
   * Runs work and returns its result.
   *
   * @param seconds time limit
   * @param bytes limit of the memory in use during the work, after a collection
   * @throws TooMuch if the work exceeds a limit
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
          throw new TooMuch(
              seconds == 1
                  ? Texts.of("command.bounded_task.1_second")
                  : Texts.of("command.bounded_task.seconds", seconds));
        }
        if (worker.isAlive() && used() > bytes) {
          // Garbage may account for most of the memory in use.
          System.gc();
          if (used() > bytes) {
            worker.interrupt();
            throw new TooMuch(Texts.of("command.bounded_task.mib_of_memory", bytes / MEBIBYTE));
          }
        }
      }
    } catch (InterruptedException e) {
      worker.interrupt();
      throw new IllegalStateException("interrupted while other work is carried out", e);
    }
    if (worker.failure instanceof OutOfMemoryError) {
      throw new TooMuch(
          Texts.of(
              "command.bounded_task.mib_of_memory", Runtime.getRuntime().maxMemory() / MEBIBYTE));
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
