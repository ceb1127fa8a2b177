package taperbook.metric.fit;

import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * The share of a session's time at or above a power.
 *
 * <p>Bounds assume that the power between two readings lies between them and that each reading is
 * within half a step. The lower bound includes the gaps with both readings certainly at or above
 * the level; the upper bound includes those with one that may be, and the time without power
 * readings. Each possible crossing time, and the first and last time, is known within half a clock
 * step.
 */
public final class TimeShare {
  private final Trace power;
  private final double sessionSeconds;

  /**
   * Creates the shares of a session.
   *
   * @param power power readings, kW, spanning a positive time
   * @param sessionSeconds time from plugging in to the end, s, at least the span of the readings
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
   * Returns the share of the recorded time during which power was at or above a level, %.
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
    Stretch certain = stretch(level + h, true);
    Stretch possible = stretch(level - h, false);
    double unread = sessionSeconds - span;
    double least = Math.max(0, certain.inside - c * certain.edgesInside);
    double most = possible.inside + c * possible.edgesInside + unread;
    double low = share(least, certain.outside + c * certain.edgesOutside + unread);
    double high = share(most, Math.max(0, possible.outside - c * possible.edgesOutside));
    double value = 100 * seconds / span;
    return new Estimate(value, Interval.between(low, high).hull(value));
  }

  /** Returns the seconds of a gap during which the linear interpolation is at or above a level. */
  private double above(int gap, double level) {
    double time = power.second(gap + 1) - power.second(gap);
    double low = Math.min(power.value(gap), power.value(gap + 1));
    double high = Math.max(power.value(gap), power.value(gap + 1));
    if (low >= level) {
      return time;
    }
    return high < level ? 0 : time * (high - level) / (high - low);
  }

  private static double share(double part, double rest) {
    return part <= 0 ? 0 : 100 * part / (part + rest);
  }

  /** Seconds inside and outside, each with the number of its edges. */
  private record Stretch(double inside, double outside, int edgesInside, int edgesOutside) {}

  /** Returns the gaps with both readings (or one of them) at or above a level, and the others. */
  private Stretch stretch(double level, boolean both) {
    double[] seconds = new double[2];
    int[] edges = new int[2];
    int before = -1;
    for (int i = 0; i + 1 < power.size(); i++) {
      boolean left = power.value(i) >= level;
      boolean right = power.value(i + 1) >= level;
      int side = (both ? left && right : left || right) ? 0 : 1;
      seconds[side] += power.second(i + 1) - power.second(i);
      if (side != before) {
        edges[side]++;
        if (before >= 0) {
          edges[before]++;
        }
      }
      before = side;
    }
    edges[before]++;
    return new Stretch(seconds[0], seconds[1], edges[0], edges[1]);
  }
}
