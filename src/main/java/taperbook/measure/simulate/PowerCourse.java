package taperbook.measure.simulate;

import taperbook.measure.curve.LinearPower;
import taperbook.model.Trace;
import taperbook.model.UncertaintySource;

/**
 * Draws courses of power: each reading within half a step of what was displayed, and between two
 * readings one bend, see {@link Bend}. Neighbouring readings that show the same power share one
 * error: a steady power is rounded the same way each time.
 *
 * <p>Of a logger's many readings the rounding errors average out (a sum of n independent errors
 * grows with the root of n only), so a dense trace is taken as it is.
 */
final class PowerCourse {

  private final Trace trace;
  private final boolean dense;
  private final int peakIndex;
  private final double[] seconds;
  private final double[] kilowatts;
  private final double[] sums;
  private final double[] rates;
  private final boolean[] known;
  private final Bend bend = Bend.ofPower();

  PowerCourse(Trace trace) {
    this.trace = trace;
    this.dense = Thinned.isDense(trace);
    int points = dense ? trace.size() : 2 * trace.size() - 1;
    this.seconds = new double[points];
    this.kilowatts = new double[points];
    this.sums = new double[points];
    this.rates = new double[trace.size()];
    this.known = new boolean[trace.size()];
    this.peakIndex = trace.indexOfMax();
    if (dense) {
      for (int i = 0; i < points; i++) {
        seconds[i] = trace.second(i);
        kilowatts[i] = trace.value(i);
      }
      integrate();
    } else {
      setKnownRates();
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
    double error = 0;
    for (int i = 0; i < trace.size(); i++) {
      if (i == 0 || trace.value(i) != trace.value(i - 1)) {
        error = trace.halfStep() * draws.symmetric(UncertaintySource.POWER_DISPLAY);
      }
      seconds[2 * i] = trace.second(i);
      kilowatts[2 * i] = trace.value(i) + error;
    }
    if (draws.has(UncertaintySource.BETWEEN_READINGS)) {
      setDrawnRates();
    }
    for (int i = 1; i < seconds.length; i += 2) {
      bend(i, draws);
    }
    integrate();
  }

  /** Sets point i, which lies between two readings. */
  private void bend(int i, Draws draws) {
    double time = seconds[i + 1] - seconds[i - 1];
    double rise = kilowatts[i + 1] - kilowatts[i - 1];
    seconds[i] = seconds[i - 1] + time / 2;
    kilowatts[i] = kilowatts[i - 1] + rise / 2;
    if (time > 0 && draws.has(UncertaintySource.BETWEEN_READINGS)) {
      int gap = i / 2;
      double rate = known[gap] ? rise / time : rates[gap];
      double after = rate(gap + 1, rate);
      double before = rate(gap - 1, 2 * rate - after);
      if (i + 3 >= seconds.length) {
        after = 2 * rate - before;
      }
      bend.draw(draws, time, rise, rate, before, after);
      seconds[i] = seconds[i - 1] + bend.at();
      kilowatts[i] = kilowatts[i - 1] + bend.value();
    }
  }

  /**
   * Rates that no draw changes. A rise of two steps or less counts without what rounding alone may
   * have made of it, so that a flat stretch whose last digit flickers makes no corners.
   */
  private void setKnownRates() {
    double step = 2 * trace.halfStep();
    for (int j = 0; j + 1 < trace.size(); j++) {
      double shown = trace.value(j + 1) - trace.value(j);
      known[j] = Math.abs(shown) <= 2.5 * step;
      double rise = Math.copySign(Math.max(0, Math.abs(shown) - step), shown);
      rates[j] = rise / (trace.second(j + 1) - trace.second(j));
    }
  }

  private void setDrawnRates() {
    for (int j = 0; j + 1 < known.length; j++) {
      if (!known[j]) {
        rates[j] =
            (kilowatts[2 * j + 2] - kilowatts[2 * j]) / (seconds[2 * j + 2] - seconds[2 * j]);
      }
    }
  }

  /** Rate from reading j to the next, or another where there is no such gap. */
  private double rate(int j, double other) {
    if (j < 0 || j + 1 >= known.length || seconds[2 * j + 2] <= seconds[2 * j]) {
      return other;
    }
    return rates[j];
  }

  private void integrate() {
    for (int i = 1; i < seconds.length; i++) {
      double hours = (seconds[i] - seconds[i - 1]) / LinearPower.SECONDS_PER_HOUR;
      sums[i] = sums[i - 1] + (kilowatts[i] + kilowatts[i - 1]) / 2 * hours;
    }
  }

  /** The drawn power of the highest reading, kW. */
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
      return (second - seconds[0]) / LinearPower.SECONDS_PER_HOUR * kilowatts[0];
    }
    if (second >= seconds[n - 1]) {
      return sums[n - 1]
          + (second - seconds[n - 1]) / LinearPower.SECONDS_PER_HOUR * kilowatts[n - 1];
    }
    int i = gap(second);
    double hours = (second - seconds[i]) / LinearPower.SECONDS_PER_HOUR;
    return sums[i] + (kilowatts[i] + at(second)) / 2 * hours;
  }

  /** When an energy has been added since the first reading, s. */
  double timeOf(double kilowattHours) {
    int n = seconds.length;
    int low = 0;
    int high = n - 1;
    if (kilowattHours >= sums[n - 1]) {
      double power = Math.max(kilowatts[n - 1], 1e-9);
      return seconds[n - 1] + (kilowattHours - sums[n - 1]) * LinearPower.SECONDS_PER_HOUR / power;
    }
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (sums[middle] >= kilowattHours) {
        high = middle;
      } else {
        low = middle;
      }
    }
    double missing = (kilowattHours - sums[low]) * LinearPower.SECONDS_PER_HOUR;
    double span = seconds[high] - seconds[low];
    double start = kilowatts[low];
    double slope = span > 0 ? (kilowatts[high] - start) / span : 0;
    return seconds[low] + LinearPower.secondsFor(start, slope, missing);
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
