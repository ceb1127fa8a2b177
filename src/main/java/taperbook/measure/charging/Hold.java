package taperbook.measure.charging;

import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.measure.curve.NearPeak;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.RowRef;
import taperbook.model.Trace;

/**
 * The longest unbroken time that the power stays near its peak.
 *
 * <p>Near means within the larger of the display's step and 2 % of the peak, on the
 * piecewise-linear reading. At the least the hold lasts from the first to the last of the readings
 * that are inside whatever rounding did; at the most it lasts between the readings on either side
 * that are outside whatever rounding did.
 *
 * @param from when it begins, s since plugging in
 * @param to when it ends, s
 * @param duration how long it lasts, s
 * @param rows the readings inside
 */
record Hold(Estimate from, Estimate to, Estimate duration, List<RowRef> rows) {
  /** The longest hold; of several equally long ones the first. */
  static Hold longest(Trace power) {
    double step = 2 * power.halfStep();
    double threshold = power.max() - NearPeak.tolerance(power);
    Run run =
        longestRun(power, threshold, r -> r.exit(power, threshold) - r.entry(power, threshold));
    double from = run.entry(power, threshold);
    double to = run.exit(power, threshold);
    double c = power.clockHalfStep();
    Run surely = longestRun(power, Math.min(power.max(), threshold + step), r -> r.seconds(power));
    Run perhaps = longestRun(power, threshold - step, r -> r.outerSeconds(power));
    double least = Math.max(0, surely.seconds(power) - 2 * c);
    double most = perhaps.outerSeconds(power) + 2 * c;
    return new Hold(
        new Estimate(from, around(power, run, threshold - step, true).hull(from)),
        new Estimate(to, around(power, run, threshold - step, false).hull(to)),
        new Estimate(to - from, new Interval(least, Math.max(least, most)).hull(to - from)),
        run.rows(power));
  }

  /** Where an end of the hold lies: from the reading inside to the one surely outside. */
  private static Interval around(Trace power, Run run, double surelyOutside, boolean start) {
    int inside = start ? run.first : run.last;
    int step = start ? -1 : 1;
    int outside = inside;
    while (outside + step >= 0
        && outside + step < power.size()
        && power.value(outside) >= surelyOutside) {
      outside += step;
    }
    return Interval.between(power.second(inside), power.second(outside));
  }

  private static Run longestRun(Trace power, double threshold, ToDoubleFunction<Run> length) {
    Run best = new Run(0, -1);
    double bestSeconds = -1;
    int i = 0;
    while (i < power.size()) {
      if (power.value(i) < threshold) {
        i++;
        continue;
      }
      int last = i;
      while (last + 1 < power.size() && power.value(last + 1) >= threshold) {
        last++;
      }
      Run run = new Run(i, last);
      double seconds = length.applyAsDouble(run);
      if (seconds > bestSeconds) {
        best = run;
        bestSeconds = seconds;
      }
      i = last + 1;
    }
    return best;
  }

  /** Neighbouring readings at or above a threshold, by index. */
  private record Run(int first, int last) {
    double seconds(Trace power) {
      return power.second(last) - power.second(first);
    }

    double outerSeconds(Trace power) {
      int before = Math.max(0, first - 1);
      int after = Math.min(power.size() - 1, last + 1);
      return power.second(after) - power.second(before);
    }

    /** When the piecewise-linear power rises through the threshold, or the first reading. */
    double entry(Trace power, double threshold) {
      return first == 0 ? power.second(0) : crossing(power, first - 1, threshold);
    }

    /** When the piecewise-linear power falls through the threshold, or the last reading. */
    double exit(Trace power, double threshold) {
      return last == power.size() - 1 ? power.second(last) : crossing(power, last, threshold);
    }

    private static double crossing(Trace power, int gap, double threshold) {
      double share = (threshold - power.value(gap)) / (power.value(gap + 1) - power.value(gap));
      return power.second(gap) + share * (power.second(gap + 1) - power.second(gap));
    }

    List<RowRef> rows(Trace power) {
      return power.rows(first, last);
    }
  }
}
