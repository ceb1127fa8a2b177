package taperbook.metric.bounds;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Method;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * Energy by integrating power over time with the trapezoidal rule:
 *
 * <pre>
 *   E = sum over gaps of (P[i] + P[i+1]) / 2 * (t[i+1] - t[i]) / 3600      [kWh from kW and s]
 * </pre>
 *
 * <p>Bounds: in each gap the power lies between its two readings, each within half a display step.
 */
public final class PowerIntegral implements EnergyOverTime {
  private final Trace power;
  private final double[] sums;
  private final double[] lowSums;
  private final double[] highSums;

  /** Creates the integral of power readings, kW; at least two. */
  public PowerIntegral(Trace power) {
    if (power.size() < 2) {
      throw new IllegalArgumentException("one reading of power cannot be integrated");
    }
    this.power = power;
    int n = power.size();
    this.sums = new double[n];
    this.lowSums = new double[n];
    this.highSums = new double[n];
    for (int i = 1; i < n; i++) {
      double hours = (power.second(i) - power.second(i - 1)) / LinearPower.SECONDS_PER_HOUR;
      sums[i] = sums[i - 1] + (power.value(i - 1) + power.value(i)) / 2 * hours;
      lowSums[i] = lowSums[i - 1] + low(i - 1) * hours;
      highSums[i] = highSums[i - 1] + high(i - 1) * hours;
    }
  }

  private double low(int gap) {
    return Math.min(power.value(gap), power.value(gap + 1)) - power.halfStep();
  }

  private double high(int gap) {
    return Math.max(power.value(gap), power.value(gap + 1)) + power.halfStep();
  }

  @Override
  public Interval span() {
    return new Interval(power.firstSecond(), power.lastSecond());
  }

  @Override
  public Estimate between(double from, double to) {
    double value = sum(to) - sum(from);
    double c = power.clockHalfStep();
    double clock =
        2 * c * new PowerBounds(power).over(from, to).high() / LinearPower.SECONDS_PER_HOUR;
    double low = lowSum(to) - lowSum(from) - clock;
    double high = highSum(to) - highSum(from) + clock;
    return new Estimate(value, Interval.between(low, high).hull(value));
  }

  private double sum(double second) {
    int i = power.indexAtOrBefore(second);
    double hours = (second - power.second(i)) / LinearPower.SECONDS_PER_HOUR;
    return hours <= 0 ? sums[i] : sums[i] + (power.value(i) + power.at(second)) / 2 * hours;
  }

  private double lowSum(double second) {
    int i = power.indexAtOrBefore(second);
    double hours = (second - power.second(i)) / LinearPower.SECONDS_PER_HOUR;
    return hours <= 0 ? lowSums[i] : lowSums[i] + low(i) * hours;
  }

  private double highSum(double second) {
    int i = power.indexAtOrBefore(second);
    double hours = (second - power.second(i)) / LinearPower.SECONDS_PER_HOUR;
    return hours <= 0 ? highSums[i] : highSums[i] + high(i) * hours;
  }

  @Override
  public List<RowRef> rows(double from, double to) {
    int first = Math.max(0, power.indexAtOrBefore(from));
    int last = power.indexAtOrBefore(to);
    if (last + 1 < power.size() && power.second(last) < to) {
      last++;
    }
    return power.rows(first, last);
  }

  @Override
  public Method method() {
    return Method.ENERGY_INTEGRAL;
  }

  /**
   * Bounds of the true power. Assumes that the power between two readings lies between them and
   * that a display rounds to the nearest step.
   */
  static final class PowerBounds {
    private final Trace power;

    /** Creates bounds from power readings, kW. */
    public PowerBounds(Trace power) {
      this.power = power;
    }

    /**
     * Returns the bounds of the power in a time span, kW. The span is clamped to the readings.
     *
     * @param from start, s
     * @param to end, s, not before {@code from}
     */
    public Interval over(double from, double to) {
      double start = clamp(from - power.clockHalfStep());
      double end = clamp(to + power.clockHalfStep());
      int first = Math.max(0, power.indexAtOrBefore(start));
      int last = Math.min(power.size() - 1, power.indexAtOrBefore(end) + 1);
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = first; i <= last; i++) {
        low = Math.min(low, power.value(i));
        high = Math.max(high, power.value(i));
      }
      return new Interval(low - power.halfStep(), high + power.halfStep());
    }

    private double clamp(double second) {
      return Math.min(Math.max(second, power.firstSecond()), power.lastSecond());
    }
  }
}
