package taperbook.metric.trip;

import java.util.TreeSet;

/**
 * The states of charge at which a plan may unplug: each whole per cent that the session went
 * through, its last one, and what just reaches a later station or the end with the reserve.
 */
final class UnplugLevels {
  /** What sums of shares may be off by. */
  static final double SLACK_PERCENT = 1e-9;

  private final ChargeTimes clock;
  private final TripTask task;

  UnplugLevels(ChargeTimes clock, TripTask task) {
    this.clock = clock;
    this.task = task;
  }

  /** Least state of charge to arrive at a station with, %. */
  double floorPercent() {
    return Math.max(task.reservePercent(), clock.low());
  }

  /** The levels at a station, rising, %. */
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
