package taperbook.input.readings;

/**
 * Detects a local clock that was set forward or back by an hour, as when daylight saving time
 * begins or ends.
 */
final class DaylightSavingJump {
  private static final double HOUR_SECONDS = 3600;

  /** Maximum time between the two readings around a jump, s; a choice of this program. */
  private static final double LONGEST_GAP_SECONDS = 600;

  private static final int MIN_TIMES = 4;

  private DaylightSavingJump() {}

  /** Returns true if a decrease of time is an hour minus the time between two readings. */
  static boolean isBackwardJump(double beforeSecond, double afterSecond) {
    double passed = afterSecond + HOUR_SECONDS - beforeSecond;
    return passed >= 0 && passed <= LONGEST_GAP_SECONDS;
  }

  /**
   * Returns the index of the time that is an hour plus a typical gap after the previous one; -1 if
   * there is none.
   */
  static int forwardJump(double[] seconds) {
    int widest = widest(seconds, -1);
    if (seconds.length < MIN_TIMES) {
      return -1;
    }
    double gap = seconds[widest] - seconds[widest - 1];
    int second = widest(seconds, widest);
    double otherGap = seconds[second] - seconds[second - 1];
    double passed = gap - HOUR_SECONDS;
    return passed >= 0 && passed <= otherGap && otherGap <= LONGEST_GAP_SECONDS ? widest : -1;
  }

  private static int widest(double[] seconds, int except) {
    int widest = except == 1 ? 2 : 1;
    for (int i = 1; i < seconds.length; i++) {
      if (i != except && seconds[i] - seconds[i - 1] > seconds[widest] - seconds[widest - 1]) {
        widest = i;
      }
    }
    return widest;
  }
}
