package taperbook.endtoend;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/** Waits for what another process or thread does, without a guess of how long that takes. */
final class Waiting {
  private static final long NANOS_BETWEEN_POLLS = 1_000_000;

  private Waiting() {}

  /** A state that a test waits for. */
  interface Condition {
    boolean holds() throws Exception;
  }

  /**
   * Returns as soon as a condition holds.
   *
   * @param what the state in words, for the failure
   * @param longest fails after this time
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
