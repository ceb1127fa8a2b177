package taperbook.metric.bounds;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Method;
import taperbook.session.RowRef;

/** Energy added to the battery as a function of time, from a counter or from power. */
public sealed interface EnergyOverTime permits EnergyCounter, PowerIntegral {
  /** Returns the time span covered, s. */
  Interval span();

  /**
   * Returns the energy added between two times within {@link #span()}, kWh.
   *
   * @param from start, s
   * @param to end, s, not before {@code from}
   */
  Estimate between(double from, double to);

  /** Returns the rows that the energy between two times is computed from. */
  List<RowRef> rows(double from, double to);

  /** Returns the method that determines the energy. */
  Method method();

  /** Returns true if the span covers the stretch. */
  default boolean covers(double from, double to) {
    return span().low() <= from && to <= span().high();
  }

  /** Clamps a time to the span. */
  default double clamp(double second) {
    return Math.min(Math.max(second, span().low()), span().high());
  }
}
