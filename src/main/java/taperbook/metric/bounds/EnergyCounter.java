package taperbook.metric.bounds;

import java.util.ArrayList;
import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Method;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * Energy by the car's own counter, which counts from plugging in. If the first reading is later, a
 * zero reading at plugging in is assumed. If the first reading is at plugging in and is not zero,
 * the counter was not reset and only differences are used.
 */
public final class EnergyCounter implements EnergyOverTime {
  private final Trace trace;
  private final double[] seconds;
  private final double[] values;
  private final MonotoneBounds monotoneBounds;

  /** Creates the energy from counter readings, kWh. */
  public EnergyCounter(Trace trace) {
    this.trace = trace;
    boolean anchored = trace.firstSecond() > 0;
    int extra = anchored ? 1 : 0;
    this.seconds = behind(extra, trace.seconds());
    this.values = behind(extra, trace.values());
    this.monotoneBounds =
        new MonotoneBounds(seconds, values.clone(), trace.halfStep(), trace.clockHalfStep());
  }

  /** Returns the numbers preceded by zeros. */
  private static double[] behind(int zeros, double[] numbers) {
    double[] all = zeros == 0 ? numbers : new double[zeros + numbers.length];
    System.arraycopy(numbers, 0, all, zeros, numbers.length);
    return all;
  }

  @Override
  public Interval span() {
    return new Interval(seconds[0], seconds[seconds.length - 1]);
  }

  @Override
  public Estimate between(double from, double to) {
    double value = at(to) - at(from);
    Interval bounds = monotoneBounds.at(to).minus(monotoneBounds.at(from)).atLeast(0);
    return new Estimate(value, bounds.hull(value));
  }

  @Override
  public List<RowRef> rows(double from, double to) {
    List<RowRef> rows = new ArrayList<>();
    for (double second : new double[] {from, to}) {
      int i = trace.indexAtOrBefore(second);
      if (i >= 0) {
        rows.add(trace.row(i));
      }
      boolean between = i < 0 || trace.second(i) < second;
      if (between && i + 1 < trace.size()) {
        rows.add(trace.row(i + 1));
      }
    }
    return rows;
  }

  @Override
  public Method method() {
    return Method.ENERGY_COUNTER;
  }

  private double at(double second) {
    if (second < trace.firstSecond()) {
      return trace.firstValue() * second / trace.firstSecond();
    }
    return trace.at(second);
  }
}
