package taperbook.metric.bounds;

import taperbook.session.Trace;

/** Defines when a power counts as near the peak. The definition is this report's own. */
public final class NearPeak {
  /** Tolerance below the peak, as a share of it. */
  private static final double SHARE_OF_PEAK = 0.02;

  /**
   * Number of standard deviations between the highest of some hundred fluctuating readings, 3 above
   * their mean, and one that must not end a hold, 5 below it.
   */
  private static final double SPREAD = 8;

  private NearPeak() {}

  /** Returns the tolerance below the peak: the display's step or 2 % of the peak, kW. */
  public static double tolerance(Trace power) {
    return Math.max(2 * power.halfStep(), SHARE_OF_PEAK * power.max());
  }

  /** Returns true unless readings fluctuate so much that they leave the peak by chance. */
  public static boolean isSteady(Trace power) {
    return SPREAD * RowScatter.of(power) <= tolerance(power);
  }
}
