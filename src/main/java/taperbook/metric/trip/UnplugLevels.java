package taperbook.metric.trip;

import java.util.TreeSet;

/**
 * The states of charge at which a plan may unplug: each whole per cent that the session covers, its
 * last one, and those that just reach a later station or the end with the reserve.
 */
final class UnplugLevels {
  /** Tolerance for floating-point error of summed shares. */
  static final double SLACK_PERCENT = 1e-9;

  private final ChargeTimes clock;
  private final TripTask task;

  UnplugLevels(ChargeTimes clock, TripTask task) {
    this.clock = clock;
    this.task = task;
  }

  /** Returns the minimum state of charge on arrival at a station, %. */
  double floorPercent() {
    return Math.max(task.reservePercent(), clock.low());
  }

  /** Returns the levels at a station, ascending, %. */
  double[] at(int station) {
    TreeSet<Double> levels = new TreeSet<>();
    for (int percent = (int) Math.ceil(clock.low()); percent <= clock.high(); percent++) {
      levels.add((double) percent);
    }
    levels.add(clock.high());
    for (int later = station + 1; later <= task.stations(); later++) {
      levels.add(floorPercent() + task.share(station, later));
    }
    levels.add(task.reservePercent() + task.shareToEnd(station));
    return levels
        .subSet(clock.low() - SLACK_PERCENT, true, clock.high() + SLACK_PERCENT, true)
        .stream()
        .mapToDouble(x -> x)
        .toArray();
  }
}
