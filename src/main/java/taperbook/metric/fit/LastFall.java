package taperbook.metric.fit;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Interval;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * The last time that the power falls below a level and stays below it to the end of the readings.
 *
 * <p>With a power display of half step h, the peak, and so the level, and each reading are known
 * within h. The true power is certainly at or above the level at the last reading that is so under
 * any rounding, and certainly below it from the first reading after which all are.
 *
 * @param second the time by the piecewise-linear reading, s since plugging in
 * @param times earliest and latest time that the readings allow, s
 * @param rows the readings at the two times and those around the crossing
 */
public record LastFall(double second, Interval times, List<RowRef> rows) {
  public LastFall {
    rows = List.copyOf(rows);
  }

  /**
   * Finds the last fall below a share of the peak.
   *
   * @param power power readings, kW
   * @param share share of the highest reading, above 0 and below 1
   * @return the fall; empty if the readings do not end certainly below the level
   */
  public static Optional<LastFall> below(Trace power, double share) {
    double h = power.halfStep();
    double level = share * power.max();
    int above = lastAtLeast(power, level);
    int lastPossible = lastAtLeast(power, share * (power.max() - h) - h);
    int last = power.size() - 1;
    if (power.max() <= 0 || above == last || lastPossible == last) {
      return Optional.empty();
    }
    int lastCertain = Math.max(0, lastAtLeast(power, share * (power.max() + h) + h));
    double c = power.clockHalfStep();
    Interval times =
        new Interval(power.second(lastCertain) - c, power.second(lastPossible + 1) + c);
    List<RowRef> rows =
        List.of(lastCertain, above, above + 1, lastPossible + 1).stream()
            .distinct()
            .map(power::row)
            .toList();
    return Optional.of(new LastFall(crossing(power, above, level), times, rows));
  }

  /** Returns the index of the last reading at or above a level, or -1. */
  private static int lastAtLeast(Trace power, double level) {
    int i = power.size() - 1;
    while (i >= 0 && power.value(i) < level) {
      i--;
    }
    return i;
  }

  private static double crossing(Trace power, int above, double level) {
    double fall = power.value(above) - power.value(above + 1);
    double share = (power.value(above) - level) / fall;
    return power.second(above) + share * (power.second(above + 1) - power.second(above));
  }
}
