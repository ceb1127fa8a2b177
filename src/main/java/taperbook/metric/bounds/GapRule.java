package taperbook.metric.bounds;

import taperbook.session.Trace;

/**
 * Decides which intervals between neighbouring readings are wide gaps: longer than a minute and
 * than 6 % of the recorded time. Thresholds are defined by this report.
 */
public final class GapRule {
  private static final double LEAST_SECONDS = 60;
  private static final double SHARE_OF_SESSION = 0.06;

  private GapRule() {}

  /** Returns true if the interval from reading {@code i} to the next is a wide gap. */
  public static boolean isWide(Trace trace, int i) {
    if (i + 1 >= trace.size()) {
      return false;
    }
    double gap = trace.second(i + 1) - trace.second(i);
    double session = trace.lastSecond() - trace.firstSecond();
    return gap > LEAST_SECONDS && gap > SHARE_OF_SESSION * session;
  }
}
