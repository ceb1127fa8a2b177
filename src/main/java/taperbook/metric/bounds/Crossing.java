package taperbook.metric.bounds;

import java.util.List;
import java.util.Optional;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * The first time at which a piecewise-linear trace reaches a value.
 *
 * <pre>
 *   t = t[i-1] + (v - q[i-1]) / (q[i] - q[i-1]) * (t[i] - t[i-1])
 * </pre>
 *
 * where {@code i} is the first reading with {@code q[i] >= v}.
 *
 * @param second the time, s since plugging in
 * @param rows the one or two rows it lies between
 */
public record Crossing(double second, List<RowRef> rows) {
  public Crossing {
    rows = List.copyOf(rows);
  }

  /**
   * Finds the first crossing of a value.
   *
   * @param trace readings over time
   * @param value the value to reach, in the trace's unit
   * @return the crossing; empty if the first reading is already above the value or no reading
   *     reaches it
   */
  public static Optional<Crossing> first(Trace trace, double value) {
    if (trace.firstValue() > value) {
      return Optional.empty();
    }
    for (int i = 0; i < trace.size(); i++) {
      if (trace.value(i) >= value) {
        return Optional.of(at(trace, i, value));
      }
    }
    return Optional.empty();
  }

  private static Crossing at(Trace trace, int i, double value) {
    if (i == 0 || trace.value(i) == value) {
      return new Crossing(trace.second(i), List.of(trace.row(i)));
    }
    double below = trace.value(i - 1);
    double share = (value - below) / (trace.value(i) - below);
    double second = trace.second(i - 1) + share * (trace.second(i) - trace.second(i - 1));
    return new Crossing(second, List.of(trace.row(i - 1), trace.row(i)));
  }
}
