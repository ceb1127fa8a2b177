package taperbook.chart.plots;

import taperbook.result.Curve;

/**
 * Finds the minimum of a piecewise-linear curve in a window that moves forwards. Passes over the
 * points once for all windows, because a log may have a million points.
 */
final class SlidingMinimum {
  private final Curve curve;

  /** Points of the window that are lower than all points of the window after them. */
  private final int[] candidates;

  private int head;
  private int tail;

  /** The first point at or after the start of the window. */
  private int first;

  /** The first point after the end of the window. */
  private int next;

  SlidingMinimum(Curve curve) {
    this.curve = curve;
    this.candidates = new int[curve.size()];
  }

  /**
   * Returns the minimum between two abscissas within the curve, neither of which is below that of
   * the previous call.
   */
  double between(double from, double to) {
    for (; next < curve.size() && curve.x(next) <= to; next++) {
      while (tail > head && curve.y(candidates[tail - 1]) >= curve.y(next)) {
        tail--;
      }
      candidates[tail] = next;
      tail++;
    }
    while (curve.x(first) < from) {
      first++;
    }
    while (head < tail && candidates[head] < first) {
      head++;
    }
    double inside = head < tail ? curve.y(candidates[head]) : Double.POSITIVE_INFINITY;
    return Math.min(inside, Math.min(at(from, first), at(to, next)));
  }

  /** Returns the ordinate between a point and the one before it; infinite unless it is between. */
  private double at(double x, int after) {
    if (after == 0 || after == curve.size()) {
      return Double.POSITIVE_INFINITY;
    }
    double before = curve.x(after - 1);
    if (!(before < x && x < curve.x(after))) {
      return Double.POSITIVE_INFINITY;
    }
    double slope = (curve.y(after) - curve.y(after - 1)) / (curve.x(after) - before);
    return curve.y(after - 1) + slope * (x - before);
  }
}
