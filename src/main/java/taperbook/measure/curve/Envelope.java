package taperbook.measure.curve;

import java.util.Arrays;
import java.util.Optional;
import taperbook.model.Interval;
import taperbook.model.Trace;

/**
 * Bounds that hold the true course of a quantity that never falls, such as state of charge or an
 * energy counter, given readings of it.
 *
 * <p>With readings <i>q<sub>i</sub></i> at times <i>t<sub>i</sub></i>, half a display step <i>h</i>
 * and half a clock step <i>c</i>, the truth lies
 *
 * <ul>
 *   <li>at a reading within <i>q<sub>i</sub></i> ± <i>h</i>, and, as it never falls, not below any
 *       earlier lower bound nor above any later upper bound;
 *   <li>in a gap on or between lines through the bounds of both ends whose slopes are the slowest
 *       and fastest rate that rounding allows in this gap and the two beside it.
 * </ul>
 *
 * <p>With readings every few per cent the second rule tells within a fraction of a gap where a
 * value was crossed; with dense readings rounding hides the rate and only the first rule is left.
 * The rule fails if the rate in a gap leaves the range of its neighbours without a trace in any
 * reading; the report states it as an assumption.
 */
public final class Envelope {
  /** Steps of the display that a rate is taken over where a bound runs past the readings. */
  private static final int STEPS_FOR_RATE = 4;

  private final double[] seconds;
  private final double[] lows;
  private final double[] highs;
  private final double[] slowest;
  private final double[] fastest;
  private final double clockHalfStep;

  /** Bounds from the readings of a trace. */
  public Envelope(Trace trace) {
    this(trace.seconds(), trace.values(), trace.halfStep(), trace.clockHalfStep());
  }

  /**
   * Bounds from readings.
   *
   * @param seconds times, never falling, s; not copied, and must not change
   * @param values readings; taken for this object's own use
   * @param halfStep half the display's step
   * @param clockHalfStep half the clock's step, s
   */
  Envelope(double[] seconds, double[] values, double halfStep, double clockHalfStep) {
    int n = seconds.length;
    this.seconds = seconds;
    this.clockHalfStep = clockHalfStep;
    this.lows = new double[n];
    this.highs = values;
    boundReadings(halfStep);
    this.slowest = new double[Math.max(0, n - 1)];
    this.fastest = new double[Math.max(0, n - 1)];
    boundRates();
  }

  /** Finds both bounds; the upper ones stand at first for the readings themselves. */
  private void boundReadings(double halfStep) {
    int n = highs.length;
    double low = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      low = Math.max(low, highs[i] - halfStep);
      lows[i] = low;
    }
    double high = Double.POSITIVE_INFINITY;
    for (int i = n - 1; i >= 0; i--) {
      high = Math.min(high, highs[i] + halfStep);
      highs[i] = high;
    }
    // A display that falls back by more than a step contradicts the rule: trust neither reading.
    for (int i = 0; i < n; i++) {
      if (lows[i] > highs[i]) {
        double swap = lows[i];
        lows[i] = highs[i];
        highs[i] = swap;
      }
    }
  }

  private void boundRates() {
    int gaps = slowest.length;
    for (int i = 0; i < gaps; i++) {
      double time = seconds[i + 1] - seconds[i];
      double most = time + 2 * clockHalfStep;
      slowest[i] = most > 0 ? Math.max(0, lows[i + 1] - highs[i]) / most : 0;
      double least = time - 2 * clockHalfStep;
      fastest[i] = least > 0 ? (highs[i + 1] - lows[i]) / least : Double.POSITIVE_INFINITY;
    }
    spread(slowest, -1);
    spread(fastest, 1);
  }

  /** Puts the greatest of each rate and its neighbours in its place; by -1 the least. */
  private static void spread(double[] rates, int sign) {
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < rates.length; i++) {
      double own = sign * rates[i];
      double after = i + 1 < rates.length ? sign * rates[i + 1] : own;
      rates[i] = sign * Math.max(own, Math.max(before, after));
      before = own;
    }
  }

  /** Lower bound of the truth at the first reading. */
  public double firstLow() {
    return lows[0];
  }

  /** Upper bound of the truth at the first reading. */
  public double firstHigh() {
    return highs[0];
  }

  /**
   * Bounds of the truth at a time. Times outside the readings are taken as the first or last one.
   *
   * @param second time, s
   */
  public Interval at(double second) {
    return Interval.between(low(second - clockHalfStep), high(second + clockHalfStep));
  }

  private double low(double second) {
    int i = gapOf(second);
    if (i < 0) {
      return second < seconds[0] ? lows[0] : lows[lows.length - 1];
    }
    double fromLeft = lows[i] + slowest[i] * (second - seconds[i]);
    double fromRight = lows[i + 1] - product(fastest[i], seconds[i + 1] - second);
    return Math.max(fromLeft, fromRight);
  }

  private double high(double second) {
    int i = gapOf(second);
    if (i < 0) {
      return second < seconds[0] ? highs[0] : highs[highs.length - 1];
    }
    double fromLeft = highs[i] + product(fastest[i], second - seconds[i]);
    double fromRight = highs[i + 1] - slowest[i] * (seconds[i + 1] - second);
    return Math.min(fromLeft, fromRight);
  }

  /** Rate times time where the rate may be infinite and the time zero. */
  private static double product(double rate, double time) {
    return time <= 0 ? 0 : rate * time;
  }

  /** Index of the gap that a time lies in, or -1 outside all gaps. */
  private int gapOf(double second) {
    int n = seconds.length;
    if (!(second >= seconds[0] && second < seconds[n - 1])) {
      return -1;
    }
    int found = Arrays.binarySearch(seconds, second);
    int i = found >= 0 ? found : -found - 2;
    while (i + 1 < n - 1 && seconds[i + 1] <= second) {
      i++;
    }
    return i;
  }

  /**
   * The times at which the truth can have reached a value.
   *
   * @param value bounds of the value
   * @return earliest time of the lower bound to latest time of the upper one, s; empty if the
   *     readings gain too little for a rate to carry a bound past them
   */
  public Optional<Interval> timesOf(Interval value) {
    double earliest = earliest(value.low());
    double latest = latest(value.high());
    boolean bounded = Double.isFinite(earliest) && Double.isFinite(latest);
    return bounded ? Optional.of(Interval.between(earliest, latest)) : Optional.empty();
  }

  /**
   * When the truth can have reached a value at the earliest. Where the first reading might already
   * be past it, the time lies before the first reading, by the slowest rate of the first readings.
   *
   * @param value the value
   * @return the time, s; infinite if the readings rule out that it was reached, or if the rate at
   *     the start is not known
   */
  public double earliest(double value) {
    if (highs[0] >= value) {
      return seconds[0] - (highs[0] - value) / startRate() - clockHalfStep;
    }
    int i = firstAtLeast(highs, value) - 1;
    if (i < 0) {
      return Double.POSITIVE_INFINITY;
    }
    double rise = seconds[i] + (value - highs[i]) / fastest[i];
    double fall =
        slowest[i] > 0 ? seconds[i + 1] - (highs[i + 1] - value) / slowest[i] : seconds[i];
    return Math.min(seconds[i + 1], Math.max(rise, fall)) - clockHalfStep;
  }

  /**
   * When the truth must have reached a value at the latest. Where even the last reading may lie
   * below it, the time lies after the last reading, by the slowest rate of the last readings.
   *
   * @param value the value
   * @return the time, s; positive infinity if the rate at the end is not known
   */
  public double latest(double value) {
    int n = seconds.length;
    if (lows[0] >= value) {
      return seconds[0] + clockHalfStep;
    }
    int i = firstAtLeast(lows, value) - 1;
    if (i < 0) {
      return seconds[n - 1] + (value - lows[n - 1]) / endRate() + clockHalfStep;
    }
    double rise = slowest[i] > 0 ? seconds[i] + (value - lows[i]) / slowest[i] : seconds[i + 1];
    double fall = seconds[i + 1] - (lows[i + 1] - value) / fastest[i];
    return Math.max(seconds[i], Math.min(rise, fall)) + clockHalfStep;
  }

  /** True if the latest time for a value lies after the last reading. */
  public boolean latestRunsPastEnd(double value) {
    return lows[lows.length - 1] < value;
  }

  /** Index of the first entry at or above a value, or -1. The entries never fall. */
  private static int firstAtLeast(double[] rising, double value) {
    int low = 0;
    int high = rising.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rising[middle] >= value) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low < rising.length ? low : -1;
  }

  /** Slowest rate that the first readings allow, taken over a few steps of the display. */
  private double startRate() {
    for (int i = 1; i < seconds.length; i++) {
      double gain = lows[i] - highs[0];
      if (gain >= (highs[0] - lows[0]) * (STEPS_FOR_RATE - 1) && gain > 0) {
        return gain / (seconds[i] - seconds[0] + 2 * clockHalfStep);
      }
    }
    return wholeRate();
  }

  /** Slowest rate that the last readings allow, taken over a few steps of the display. */
  private double endRate() {
    int last = seconds.length - 1;
    for (int i = last - 1; i >= 0; i--) {
      double gain = lows[last] - highs[i];
      if (gain >= (highs[last] - lows[last]) * (STEPS_FOR_RATE - 1) && gain > 0) {
        return gain / (seconds[last] - seconds[i] + 2 * clockHalfStep);
      }
    }
    return wholeRate();
  }

  private double wholeRate() {
    int last = seconds.length - 1;
    return Math.max(0, lows[last] - highs[0]) / (seconds[last] - seconds[0] + 2 * clockHalfStep);
  }
}
