package taperbook.measure.curve;

import java.util.Arrays;

/** Times of readings within a stretch. */
final class Knots {
  private Knots() {}

  /**
   * Those of some times that lie between two others, neither included.
   *
   * @param seconds times that never fall, s
   */
  static double[] between(double[] seconds, double from, double to) {
    int first = 0;
    while (first < seconds.length && seconds[first] <= from) {
      first++;
    }
    int end = first;
    while (end < seconds.length && seconds[end] < to) {
      end++;
    }
    return Arrays.copyOfRange(seconds, first, end);
  }
}
