package taperbook.input.readings;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds resets of an energy counter to zero, and continues its count. The energy between the last
 * reading before a reset and the reset is lost; it is at most what the neighbouring rate permits,
 * minus the first reading after the reset.
 */
final class CounterResets {
  /** Maximum reading after a reset, as a share of the reading before. */
  private static final double NEARLY_ZERO_SHARE = 0.1;

  /** Maximum share of the total energy that may be lost; a choice of this program. */
  static final double MAX_LOST_SHARE = 0.01;

  /** Number of readings on each side that determine the rate. */
  private static final int BESIDE = 30;

  /**
   * A reset.
   *
   * @param index the first reading after it
   * @param maxLostKilowattHours maximum energy that was not counted
   */
  record Reset(int index, double maxLostKilowattHours) {}

  private final double[] seconds;
  private final double[] shown;
  private final double step;

  CounterResets(double[] seconds, double[] shownKilowattHours, double stepKilowattHours) {
    this.seconds = seconds.clone();
    this.shown = shownKilowattHours.clone();
    this.step = stepKilowattHours;
  }

  /** Returns the decreases of the counter that are resets, in order. */
  List<Reset> find() {
    List<Reset> found = new ArrayList<>();
    for (int i = 2; i + 1 < shown.length; i++) {
      double max = rate(i) * (seconds[i] - seconds[i - 1]) + step;
      if (shown[i] < shown[i - 1]
          && shown[i] >= 0
          && shown[i] <= Math.min(NEARLY_ZERO_SHARE * shown[i - 1], max)
          && shown[i + 1] >= shown[i]) {
        found.add(new Reset(i, max - shown[i]));
      }
    }
    return found;
  }

  /** Returns the readings as if the counter had never been reset, kWh. */
  double[] continued(List<Reset> resets) {
    double[] carried = shown.clone();
    for (Reset reset : resets) {
      for (int i = reset.index(); i < carried.length; i++) {
        carried[i] += shown[reset.index() - 1];
      }
    }
    return carried;
  }

  /**
   * Returns the greater of the mean rates before and after, kWh/s, each increased by a step of the
   * display.
   */
  private double rate(int at) {
    int from = Math.max(0, at - 1 - BESIDE);
    int to = Math.min(shown.length - 1, at + BESIDE);
    return Math.max(rate(from, at - 1), rate(at, to));
  }

  private double rate(int from, int to) {
    double time = seconds[to] - seconds[from];
    return time > 0 ? Math.max(0, shown[to] - shown[from] + step) / time : 0;
  }
}
