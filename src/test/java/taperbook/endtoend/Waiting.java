package taperbook.endtoend;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/** Waits for a state of another process or thread by polling, without a fixed delay. */
final class Waiting {
  private static final long NANOS_BETWEEN_POLLS = 1_000_000;

  private Waiting() {}

  interface Condition {
    boolean holds() throws Exception;
  }

  /**
   * Returns when a condition is true.
   *
   * @param what the state, for the failure message
   * @param longest timeout
   */
  static void until(String what, Duration longest, Condition condition) {
    long end = System.nanoTime() + longest.toNanos();
    try {
      while (!condition.holds()) {
        if (System.nanoTime() > end) {
          throw new AssertionError("not within " + longest + ": " + what);
        }
        LockSupport.parkNanos(NANOS_BETWEEN_POLLS);
      }
    } catch (Exception e) {
      throw new IllegalStateException("while waiting until " + what, e);
    }
  }
}
