package taperbook.metric.trip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import taperbook.quantity.Interval;

/**
 * Determines how flat the optimum of a plan is: for each stop, the states of charge to unplug at
 * that keep the plan within a time of the best, with the same stations and the other stops
 * re-optimised.
 */
public final class UnplugRanges {
  private final ChargeTimes clock;
  private final TripTask task;
  private final UnplugLevels levels;
  private final List<TripPlan.Stop> stops;

  private UnplugRanges(ChargeTimes clock, TripTask task, TripPlan plan) {
    this.clock = clock;
    this.task = task;
    this.levels = new UnplugLevels(clock, task);
    this.stops = plan.stops();
  }

  /**
   * Returns the range of each stop, %.
   *
   * @param plan the fastest plan
   * @param seconds allowed delay, s
   */
  public static List<Interval> within(
      ChargeTimes clock, TripTask task, TripPlan plan, double seconds) {
    UnplugRanges ranges = new UnplugRanges(clock, task, plan);
    return ranges.ranges(plan.stopSeconds() + seconds + 1e-6);
  }

  private List<Interval> ranges(double mostSeconds) {
    List<double[]> upTo = upTo();
    List<double[]> after = after();
    List<Interval> ranges = new ArrayList<>();
    for (int k = 0; k < stops.size(); k++) {
      double[] at = levels.at(stops.get(k).station());
      double unplug = stops.get(k).unplugPercent();
      Interval range = Interval.exactly(unplug);
      for (int u = 0; u < at.length; u++) {
        if (upTo.get(k)[u] + after.get(k)[u] <= mostSeconds) {
          range = range.hull(at[u]);
        }
      }
      ranges.add(range);
    }
    return ranges;
  }

  /** Returns the least time of all stops up to departure from each stop at each level, s. */
  private List<double[]> upTo() {
    List<double[]> times = new ArrayList<>();
    double[] from = {task.startPercent()};
    double[] spent = {0};
    int station = 0;
    for (TripPlan.Stop stop : stops) {
      double[] to = levels.at(stop.station());
      double share = task.share(station, stop.station());
      double[] next = new double[to.length];
      Arrays.fill(next, Double.POSITIVE_INFINITY);
      for (int u = 0; u < from.length; u++) {
        for (int v = 0; v < to.length; v++) {
          next[v] = Math.min(next[v], spent[u] + stopSeconds(from[u] - share, to[v]));
        }
      }
      times.add(next);
      from = to;
      spent = next;
      station = stop.station();
    }
    return times;
  }

  /** Returns the least time of all later stops after departure from each stop at each level, s. */
  private List<double[]> after() {
    List<double[]> times = new ArrayList<>();
    for (int k = stops.size() - 1; k >= 0; k--) {
      int station = stops.get(k).station();
      double[] from = levels.at(station);
      double[] rest = new double[from.length];
      for (int u = 0; u < from.length; u++) {
        rest[u] =
            k == stops.size() - 1
                ? toEnd(from[u] - task.shareToEnd(station))
                : onward(from[u], station, stops.get(k + 1).station(), times.get(0));
      }
      times.add(0, rest);
    }
    return times;
  }

  private double toEnd(double arrival) {
    return arrival >= task.reservePercent() - UnplugLevels.SLACK_PERCENT
        ? 0
        : Double.POSITIVE_INFINITY;
  }

  private double onward(double unplug, int station, int nextStation, double[] rest) {
    double[] to = levels.at(nextStation);
    double arrival = unplug - task.share(station, nextStation);
    double best = Double.POSITIVE_INFINITY;
    for (int v = 0; v < to.length; v++) {
      best = Math.min(best, stopSeconds(arrival, to[v]) + rest[v]);
    }
    return best;
  }

  private double stopSeconds(double arrival, double unplug) {
    boolean possible =
        arrival >= levels.floorPercent() - UnplugLevels.SLACK_PERCENT
            && arrival <= clock.high() + UnplugLevels.SLACK_PERCENT
            && arrival <= unplug + UnplugLevels.SLACK_PERCENT;
    return possible
        ? task.secondsPerStop() + clock.seconds(arrival, unplug)
        : Double.POSITIVE_INFINITY;
  }
}
