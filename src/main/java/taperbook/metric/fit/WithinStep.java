package taperbook.metric.fit;

import taperbook.session.Trace;

/**
 * Where within a step of its display a rising quantity stood, told by when the display changed.
 *
 * <p>Between two changes by one step the truth rises from half a step below the displayed value to
 * half a step above it:
 *
 * <pre>
 *   e(t) = v - h + 2 h (t - t_a) / (t_b - t_a)
 * </pre>
 *
 * with the changes at <i>t<sub>a</sub></i> and <i>t<sub>b</sub></i>, each halfway between the rows
 * on its either side. Without this a logger's coarse counter, read at every per cent, beats against
 * the state of charge: its rounding errors follow one another instead of scattering.
 */
final class WithinStep {
  /** With fewer rows on a step the rows do not tell when the display changed. */
  private static final int LEAST_ROWS = 3;

  private WithinStep() {}

  /**
   * The value at a reading, within half a step of what it displays.
   *
   * @param trace readings of a quantity that never falls
   * @param i index of the reading
   * @return the value; the reading itself where the rows do not show both changes
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
