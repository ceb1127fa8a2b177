package taperbook.measure.simulate;

import taperbook.model.Trace;
import taperbook.model.UncertaintySource;

/**
 * Draws courses of power: each reading within half a step of what was displayed, and half-way
 * between two readings some power between the two.
 *
 * <p>Of a logger's many readings the rounding errors average out (a sum of n independent errors
 * grows with the root of n only), so a dense trace is taken as it is.
 */
final class PowerCourse {
  private static final int MANY = 200;
  private static final double SECONDS_PER_HOUR = 3600;

  private final Trace trace;
  private final boolean dense;
  private final int peakIndex;
  private final double[] seconds;
  private final double[] kilowatts;
  private final double[] sums;

  PowerCourse(Trace trace) {
    this.trace = trace;
    this.dense = trace.size() > MANY;
    int points = dense ? trace.size() : 2 * trace.size() - 1;
    this.seconds = new double[points];
    this.kilowatts = new double[points];
    this.sums = new double[points];
    int at = 0;
    while (trace.value(at) < trace.max()) {
      at++;
    }
    this.peakIndex = at;
    if (dense) {
      for (int i = 0; i < points; i++) {
        seconds[i] = trace.second(i);
        kilowatts[i] = trace.value(i);
      }
      integrate();
    }
  }

  /** True if every reading is taken as it is. */
  boolean isDense() {
    return dense;
  }

  void draw(Draws draws) {
    if (dense) {
      return;
    }
    for (int i = 0; i < trace.size(); i++) {
      seconds[2 * i] = trace.second(i);
      kilowatts[2 * i] =
          trace.value(i) + trace.halfStep() * draws.symmetric(UncertaintySource.POWER_DISPLAY);
    }
    for (int i = 1; i < seconds.length; i += 2) {
      seconds[i] = (seconds[i - 1] + seconds[i + 1]) / 2;
      kilowatts[i] =
          draws.between(UncertaintySource.BETWEEN_READINGS, kilowatts[i - 1], kilowatts[i + 1]);
    }
    integrate();
  }

  private void integrate() {
    for (int i = 1; i < seconds.length; i++) {
      double hours = (seconds[i] - seconds[i - 1]) / SECONDS_PER_HOUR;
      sums[i] = sums[i - 1] + (kilowatts[i] + kilowatts[i - 1]) / 2 * hours;
    }
  }

  /** The drawn power of the reading that is the highest, kW. */
  double peak(Draws draws) {
    return dense
        ? trace.max() + trace.halfStep() * draws.symmetric(UncertaintySource.POWER_DISPLAY)
        : kilowatts[2 * peakIndex];
  }

  /** A time at which the peak can have been reached: since the reading before. */
  double peakSecond(Draws draws) {
    double since = peakIndex == 0 ? Math.min(0, trace.second(0)) : trace.second(peakIndex - 1);
    return draws.between(UncertaintySource.BETWEEN_READINGS, since, trace.second(peakIndex));
  }

  /** Power at a time, kW; outside the readings that of the first or last one. */
  double at(double second) {
    int i = gap(second);
    if (i < 0) {
      return second < seconds[0] ? kilowatts[0] : kilowatts[kilowatts.length - 1];
    }
    return inGap(i, second);
  }

  /** Power at a time in a gap, kW; the gap's ends hold outside of it. */
  double inGap(int gap, double second) {
    double span = seconds[gap + 1] - seconds[gap];
    double share = span > 0 ? (second - seconds[gap]) / span : 0;
    double cut = Math.min(1, Math.max(0, share));
    return kilowatts[gap] + cut * (kilowatts[gap + 1] - kilowatts[gap]);
  }

  /** The gap that a time lies in, walking on from an earlier one. */
  int gapFrom(int earlier, double second) {
    int gap = earlier;
    while (gap + 2 < seconds.length && seconds[gap + 1] <= second) {
      gap++;
    }
    return gap;
  }

  /** Energy from the first reading to a time, kWh; past the ends at the power there. */
  double energy(double second) {
    int n = seconds.length;
    if (second <= seconds[0]) {
      return (second - seconds[0]) / SECONDS_PER_HOUR * kilowatts[0];
    }
    if (second >= seconds[n - 1]) {
      return sums[n - 1] + (second - seconds[n - 1]) / SECONDS_PER_HOUR * kilowatts[n - 1];
    }
    int i = gap(second);
    double hours = (second - seconds[i]) / SECONDS_PER_HOUR;
    return sums[i] + (kilowatts[i] + at(second)) / 2 * hours;
  }

  /** When an energy has been added since the first reading, s. */
  double timeOf(double kilowattHours) {
    int n = seconds.length;
    int low = 0;
    int high = n - 1;
    if (kilowattHours >= sums[n - 1]) {
      double power = Math.max(kilowatts[n - 1], 1e-9);
      return seconds[n - 1] + (kilowattHours - sums[n - 1]) * SECONDS_PER_HOUR / power;
    }
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (sums[middle] >= kilowattHours) {
        high = middle;
      } else {
        low = middle;
      }
    }
    double missing = (kilowattHours - sums[low]) * SECONDS_PER_HOUR;
    double span = seconds[high] - seconds[low];
    double start = kilowatts[low];
    double slope = span > 0 ? (kilowatts[high] - start) / span : 0;
    double root = Math.sqrt(Math.max(0, start * start + 2 * slope * missing));
    return start + root <= 0 ? seconds[low] : seconds[low] + 2 * missing / (start + root);
  }

  private int gap(double second) {
    int n = seconds.length;
    if (second < seconds[0] || second >= seconds[n - 1]) {
      return -1;
    }
    int low = 0;
    int high = n - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (seconds[middle] <= second) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * The longest unbroken time at or above a threshold on the drawn course.
   *
   * @param threshold kW
   * @param ends filled in with the start and end of that time, s
   */
  void longestAbove(double threshold, double[] ends) {
    double best = -1;
    int n = seconds.length;
    int i = 0;
    while (i < n) {
      if (kilowatts[i] < threshold) {
        i++;
        continue;
      }
      int last = i;
      while (last + 1 < n && kilowatts[last + 1] >= threshold) {
        last++;
      }
      double from = i == 0 ? seconds[0] : crossing(i - 1, threshold);
      double to = last == n - 1 ? seconds[last] : crossing(last, threshold);
      if (to - from > best) {
        best = to - from;
        ends[0] = from;
        ends[1] = to;
      }
      i = last + 1;
    }
  }

  private double crossing(int gap, double threshold) {
    double rise = kilowatts[gap + 1] - kilowatts[gap];
    double share = rise == 0 ? 0 : (threshold - kilowatts[gap]) / rise;
    return seconds[gap] + share * (seconds[gap + 1] - seconds[gap]);
  }
}
