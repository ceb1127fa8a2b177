package taperbook.metric.bounds;

import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * Bounds of the true power. Assumes that the power between two readings lies between them and that
 * a display rounds to the nearest step.
 */
public final class PowerBounds {
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
