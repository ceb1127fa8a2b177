package taperbook.cli;

import java.util.concurrent.locks.ReentrantLock;

/** Time as {@code watch} lives in it: pauses, a stopwatch, and the wish to stop. */
public interface WatchClock {
  /**
   * Waits.
   *
   * @param millis how long, ms
   * @return false if the command is to stop
   */
  boolean pause(long millis);

  /** A stopwatch, ns from some fixed moment. */
  long nanoTime();

  /** Carries something out that is not to be cut off half-way. */
  void whole(Runnable work);

  /** The pulse of this process, which Ctrl-C stops with exit status 0. */
  static WatchClock ofProcess() {
    return new OfProcess();
  }

  /** Sleeps; ends the process by itself when it is asked to stop. */
  final class OfProcess implements WatchClock {
    private final ReentrantLock working = new ReentrantLock();
    private boolean begun;

    @Override
    public boolean pause(long millis) {
      if (!begun) {
        begun = true;
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
    public void whole(Runnable work) {
      working.lock();
      try {
        work.run();
      } finally {
        working.unlock();
      }
    }

    /** Java would end with 130 on Ctrl-C, but to stop watching is no failure. */
    private void stop() {
      working.lock();
      System.out.flush();
      System.err.flush();
      Runtime.getRuntime().halt(ExitStatus.DONE.code());
    }
  }
}
