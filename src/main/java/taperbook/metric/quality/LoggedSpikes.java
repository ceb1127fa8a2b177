package taperbook.metric.quality;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * Detects single readings of a log that are far off both neighbours on the same side. A deviation
 * of more than one reading is treated as real.
 */
final class LoggedSpikes {
  /** Readings on either side that determine the scatter of a log. */
  private static final int REACH = 10;

  /** A spike exceeds the usual change from row to row by this factor, */
  private static final double BEYOND_SCATTER = 12;

  /** the display's step by this factor, */
  private static final double BEYOND_STEP = 4;

  /** and the previous reading by this share. */
  private static final double BEYOND_SHARE = 0.03;

  private LoggedSpikes() {}

  /** Returns the values that would fit instead, by the index of the reading. */
  static Map<Integer, Interval> of(Trace trace) {
    Map<Integer, Interval> spikes = new TreeMap<>();
    for (int i = 1; i + 1 < trace.size(); i++) {
      double before = trace.value(i - 1);
      double after = trace.value(i + 1);
      double over = trace.value(i) - Math.max(before, after);
      double under = Math.min(before, after) - trace.value(i);
      double off = Math.max(over, under);
      double least = Math.max(2 * BEYOND_STEP * trace.halfStep(), BEYOND_SHARE * Math.abs(before));
      if (off > least
          && off > 2 * Math.abs(after - before)
          && off > BEYOND_SCATTER * scatter(trace, i)) {
        double half = trace.halfStep();
        spikes.put(i, new Interval(Math.min(before, after) - half, Math.max(before, after) + half));
      }
    }
    return spikes;
  }

  /** Returns the median change from row to row around a reading, excluding the reading itself. */
  private static double scatter(Trace trace, int i) {
    int from = Math.max(1, i - REACH);
    int to = Math.min(trace.size() - 1, i + REACH);
    double[] changes = new double[to - from + 1];
    int count = 0;
    for (int k = from; k <= to; k++) {
      if (k != i && k != i + 1) {
        changes[count++] = Math.abs(trace.value(k) - trace.value(k - 1));
      }
    }
    double[] sorted = Arrays.copyOf(changes, count);
    Arrays.sort(sorted);
    return count == 0 ? 0 : sorted[count / 2];
  }
}
