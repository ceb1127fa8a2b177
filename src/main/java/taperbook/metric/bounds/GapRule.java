package taperbook.metric.bounds;

import taperbook.session.Trace;

/**
 * Which joins between neighbouring readings span a gap wide enough to say so: over a minute, and
 * over six per cent of the recorded time. A choice of this report.
 */
public final class GapRule {
  private static final double LEAST_SECONDS = 60;
  private static final double SHARE_OF_SESSION = 0.06;

  private GapRule() {}

  /** True if the join from reading {@code i} to the next spans a wide gap. */
  public static boolean isWide(Trace trace, int i) {
    if (i + 1 >= trace.size()) {
      return false;
    }
    double gap = trace.second(i + 1) - trace.second(i);
    double session = trace.lastSecond() - trace.firstSecond();
    return gap > LEAST_SECONDS && gap > SHARE_OF_SESSION * session;
  }
}
