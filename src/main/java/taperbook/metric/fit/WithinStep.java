package taperbook.metric.fit;

import taperbook.session.Trace;

/**
 * Estimates a rising quantity within a display step from the times at which the display changed.
 *
 * <p>Between two changes by one step the true value rises from half a step below the displayed
 * value to half a step above it:
 *
 * <pre>
 *   e(t) = v - h + 2 h (t - t_a) / (t_b - t_a)
 * </pre>
 *
 * with the changes at <i>t<sub>a</sub></i> and <i>t<sub>b</sub></i>, each halfway between the
 * adjacent rows. Otherwise a logger's coarse counter, read at every per cent, beats against the
 * state of charge, and its rounding errors are autocorrelated.
 */
final class WithinStep {
  /** Minimum rows per step to determine when the display changed. */
  private static final int LEAST_ROWS = 3;

  private WithinStep() {}

  /**
   * Returns the value at a reading, within half a step of the displayed value.
   *
   * @param trace readings of a quantity that does not decrease
   * @param i index of the reading
   * @return the value; the reading itself if the rows do not show both changes
   */
  static double value(Trace trace, int i) {
    double shown = trace.value(i);
    int first = i;
    while (first > 0 && trace.value(first - 1) == shown) {
      first--;
    }
    int last = i;
    while (last + 1 < trace.size() && trace.value(last + 1) == shown) {
      last++;
    }
    boolean dense = last - first + 1 >= LEAST_ROWS && first > 0 && last + 1 < trace.size();
    if (!dense
        || !isOneStep(trace, shown - trace.value(first - 1))
        || !isOneStep(trace, trace.value(last + 1) - shown)) {
      return shown;
    }
    double since = (trace.second(first - 1) + trace.second(first)) / 2;
    double until = (trace.second(last) + trace.second(last + 1)) / 2;
    double share = (trace.second(i) - since) / (until - since);
    return shown + trace.halfStep() * (2 * share - 1);
  }

  private static boolean isOneStep(Trace trace, double rise) {
    return rise > 0 && rise < 3 * trace.halfStep();
  }
}
