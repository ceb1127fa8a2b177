package taperbook.metric.bounds;

import taperbook.session.Trace;

/** What counts as near the peak of the power: a definition of this report. */
public final class NearPeak {
  /** How far below the peak still counts, as a share of it. */
  private static final double SHARE_OF_PEAK = 0.02;

  private NearPeak() {}

  /** How far below its peak a power is still held: the display's step or 2 % of the peak, kW. */
  public static double tolerance(Trace power) {
    return Math.max(2 * power.halfStep(), SHARE_OF_PEAK * power.max());
  }
}
