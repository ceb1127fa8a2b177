package taperbook.input.readings;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds where an energy counter began anew from zero, and carries it on. What was counted between
 * the last reading before and the new beginning is lost; it is at most what the rate beside it
 * allows, less what the counter shows again.
 */
final class CounterResets {
  /** A counter that began anew shows at most this share of what it showed before. */
  private static final double NEARLY_ZERO_SHARE = 0.1;

  /** More than this share of all that was counted must not be lost; a choice of this program. */
  static final double MOST_LOST_SHARE = 0.01;

  /** Readings on each side that tell the rate. */
  private static final int BESIDE = 30;

  /**
   * A new beginning.
   *
   * @param index the first reading after it
   * @param mostLostKilowattHours the most that was not counted
   */
  record Reset(int index, double mostLostKilowattHours) {}

  private final double[] seconds;
  private final double[] shown;
  private final double step;

  CounterResets(double[] seconds, double[] shownKilowattHours, double stepKilowattHours) {
    this.seconds = seconds.clone();
    this.shown = shownKilowattHours.clone();
    this.step = stepKilowattHours;
  }

  /** The falls of the counter that are new beginnings, in order. */
  List<Reset> find() {
    List<Reset> found = new ArrayList<>();
    for (int i = 2; i + 1 < shown.length; i++) {
      double most = rate(i) * (seconds[i] - seconds[i - 1]) + step;
      if (shown[i] < shown[i - 1]
          && shown[i] >= 0
          && shown[i] <= Math.min(NEARLY_ZERO_SHARE * shown[i - 1], most)
          && shown[i + 1] >= shown[i]) {
        found.add(new Reset(i, most - shown[i]));
      }
    }
    return found;
  }

  /** What the counter would show had it never begun anew, kWh. */
  double[] carriedOn(List<Reset> resets) {
    double[] carried = shown.clone();
    for (Reset reset : resets) {
      for (int i = reset.index(); i < carried.length; i++) {
        carried[i] += shown[reset.index() - 1];
      }
    }
    return carried;
  }

  /** The greater of the mean rates before and after, kWh/s, each with a step's doubt. */
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
