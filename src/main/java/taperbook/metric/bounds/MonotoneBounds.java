package taperbook.metric.bounds;

import java.util.Arrays;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * Bounds on the true course of a non-decreasing quantity, such as state of charge or an energy
 * counter, from its readings.
 *
 * <p>With readings <i>q<sub>i</sub></i> at times <i>t<sub>i</sub></i>, half a display step <i>h</i>
 * and half a clock step <i>c</i>, the true value lies
 *
 * <ul>
 *   <li>at a reading within <i>q<sub>i</sub></i> ± <i>h</i>, not below any earlier lower bound and
 *       not above any later upper bound;
 *   <li>in a gap on or between lines through the bounds of both ends whose slopes are the slowest
 *       and fastest rate that rounding allows in this gap and its two neighbours.
 * </ul>
 *
 * <p>With readings every few per cent the second rule locates a crossing within a fraction of a
 * gap. With dense readings rounding hides the rate and only the first rule applies. The second rule
 * fails if the rate in a gap leaves the range of its neighbours without affecting any reading; the
 * report states this assumption.
 */
public final class MonotoneBounds {

  private final double[] seconds;
  private final double[] lows;
  private final double[] highs;
  private final double[] slowest;
  private final double[] fastest;
  private final double clockHalfStep;

  /** Creates bounds from the readings of a trace. */
  public MonotoneBounds(Trace trace) {
    this(trace.seconds(), trace.values(), trace.halfStep(), trace.clockHalfStep());
  }

  /**
   * Creates bounds from readings.
   *
   * @param seconds non-decreasing times, s; not copied, must not change
   * @param values readings; modified by this object
   * @param halfStep half the display's step
   * @param clockHalfStep half the clock's step, s
   */
  MonotoneBounds(double[] seconds, double[] values, double halfStep, double clockHalfStep) {
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

  /** Computes both bounds; the upper bounds initially contain the readings. */
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
    // A display that falls by more than a step contradicts the rule: swap the bounds to cover both.
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

  /**
   * Replaces each rate with the maximum of itself and its neighbours, or the minimum if sign is -1.
   */
  private static void spread(double[] rates, int sign) {
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < rates.length; i++) {
      double own = sign * rates[i];
      double after = i + 1 < rates.length ? sign * rates[i + 1] : own;
      rates[i] = sign * Math.max(own, Math.max(before, after));
      before = own;
    }
  }

  /**
   * Returns the bounds of the true value at a time. Times outside the readings are clamped.
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

  /** Returns rate times time, where the rate may be infinite and the time zero. */
  private static double product(double rate, double time) {
    return time <= 0 ? 0 : rate * time;
  }

  /** Returns the index of the gap that contains a time, or -1 outside all gaps. */
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
}
