package taperbook.cli;

import java.util.concurrent.locks.ReentrantLock;

/** Time for {@code watch}: pauses, a stopwatch, and the request to stop. */
public interface WatchClock {
  /**
   * Waits.
   *
   * @param millis duration, ms
   * @return false if the command is to stop
   */
  boolean pause(long millis);

  /** Returns the value of a stopwatch, ns, with an arbitrary origin. */
  long nanoTime();

  /** Runs work that must not be interrupted. */
  void runUninterrupted(Runnable work);

  /** Sets the action that runs when the command is asked to stop; the default ignores it. */
  default void onStop(Runnable cleanup) {}

  /** Returns the clock of this process; Ctrl-C stops it with exit status 0. */
  static WatchClock ofProcess() {
    return new OfProcess();
  }

  /** Sleeps, and ends the process when it is asked to stop. */
  final class OfProcess implements WatchClock {
    private final ReentrantLock working = new ReentrantLock();
    private volatile Runnable cleanup = () -> {};
    private boolean started;

    @Override
    public boolean pause(long millis) {
      if (!started) {
        started = true;
        Runtime.getRuntime().addShutdownHook(new Thread(this::stop, "stop"));
      }
      try {
        Thread.sleep(millis);
        return true;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return false;
      }
    }

    @Override
    public long nanoTime() {
      return System.nanoTime();
    }

    @Override
    public void runUninterrupted(Runnable work) {
      working.lock();
      try {
        work.run();
      } finally {
        working.unlock();
      }
    }

    @Override
    public void onStop(Runnable cleanup) {
      this.cleanup = cleanup;
    }

    /**
     * Ends with status 0 instead of Java's 130 on Ctrl-C, because stopping a watch is not a
     * failure.
     */
    private void stop() {
      working.lock();
      cleanup.run();
      System.out.flush();
      System.err.flush();
      Runtime.getRuntime().halt(ExitStatus.DONE.code());
    }
  }
}
