package taperbook.metric.bounds;

import java.util.stream.IntStream;
import taperbook.session.Trace;

/** How much the readings of a log fluctuate from row to row. */
public final class RowScatter {
  /** Number of second differences that determine it. */
  private static final int ENOUGH = 10_000;

  /** Median of the absolute value of a standard normal number. */
  private static final double MEDIAN_OF_NORMAL = 0.6745;

  private RowScatter() {}

  /**
   * Returns the standard deviation of readings about a smooth curve, in their unit, from the median
   * of their second differences: those of a straight line are zero, steps are too few to change a
   * median, and those of independent errors have 6 times their variance.
   *
   * @param trace readings; the result is 0 unless they are a log
   */
  public static double of(Trace trace) {
    if (!trace.isLog()) {
      return 0;
    }
    int stride = 1 + trace.size() / ENOUGH;
    double[] bends =
        IntStream.range(2, trace.size())
            .filter(i -> i % stride == 0)
            .mapToDouble(i -> trace.value(i) - 2 * trace.value(i - 1) + trace.value(i - 2))
            .map(Math::abs)
            .sorted()
            .toArray();
    return bends[bends.length / 2] / MEDIAN_OF_NORMAL / Math.sqrt(6);
  }
}
