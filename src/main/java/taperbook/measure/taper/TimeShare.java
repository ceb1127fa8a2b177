package taperbook.measure.taper;

import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Trace;

/**
 * The share of a session's time at or above a power.
 *
 * <p>Bounds, with the power between two readings taken to lie between them and each reading within
 * half a step: at the least the gaps with both readings surely at or above the level; at the most
 * the gaps with one that may be, and the time without readings of power. Each unbroken run of gaps
 * begins and ends within half a step of the clock.
 */
public final class TimeShare {
  private final Trace power;
  private final double sessionSeconds;

  /**
   * Shares of a session.
   *
   * @param power power readings, kW, over more than no time
   * @param sessionSeconds time from plugging in to the end, s, not less than the readings span
   */
  public TimeShare(Trace power, double sessionSeconds) {
    double span = power.lastSecond() - power.firstSecond();
    if (!(span > 0 && sessionSeconds >= span)) {
      throw new IllegalArgumentException(span + " s of power in " + sessionSeconds + " s");
    }
    this.power = power;
    this.sessionSeconds = sessionSeconds;
  }

  /**
   * Share of the time over which power was read at which it was at or above a level, %.
   *
   * @param level the level, kW
   */
  public Estimate atLeast(double level) {
    double h = power.halfStep();
    double c = power.clockHalfStep();
    double span = power.lastSecond() - power.firstSecond();
    double seconds = 0;
    for (int i = 0; i + 1 < power.size(); i++) {
      seconds += above(i, level);
    }
    Runs surely = runs(level + h, true);
    Runs perhaps = runs(level - h, false);
    double least = Math.max(0, surely.seconds - 2 * c * surely.count);
    double most = perhaps.seconds + 2 * c * perhaps.count + sessionSeconds - span;
    double low = 100 * least / (sessionSeconds + 2 * c);
    double high = 100 * Math.min(1, most / Math.max(c, sessionSeconds - 2 * c));
    double value = 100 * seconds / span;
    return new Estimate(value, Interval.between(low, high).hull(value));
  }

  /** Seconds of a gap at which the straight way between its readings is at or above a level. */
  private double above(int gap, double level) {
    double time = power.second(gap + 1) - power.second(gap);
    double low = Math.min(power.value(gap), power.value(gap + 1));
    double high = Math.max(power.value(gap), power.value(gap + 1));
    if (low >= level) {
      return time;
    }
    return high < level ? 0 : time * (high - level) / (high - low);
  }

  private record Runs(double seconds, int count) {}

  /** The gaps with both readings (or one) at or above a level, and the runs they form. */
  private Runs runs(double level, boolean both) {
    double seconds = 0;
    int count = 0;
    boolean before = false;
    for (int i = 0; i + 1 < power.size(); i++) {
      boolean left = power.value(i) >= level;
      boolean right = power.value(i + 1) >= level;
      boolean inside = both ? left && right : left || right;
      if (inside) {
        seconds += power.second(i + 1) - power.second(i);
        count += before ? 0 : 1;
      }
      before = inside;
    }
    return new Runs(seconds, count);
  }
}
