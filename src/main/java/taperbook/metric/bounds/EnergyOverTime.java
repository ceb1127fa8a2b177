package taperbook.metric.bounds;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Method;
import taperbook.session.RowRef;

/** Energy added to the battery as a function of time, by whichever channel tells it. */
public sealed interface EnergyOverTime permits EnergyCounter, PowerIntegral {
  /** The stretch of time that it covers, s. */
  Interval span();

  /**
   * Energy added between two times within {@link #span()}, kWh.
   *
   * @param from start, s
   * @param to end, s, not before {@code from}
   */
  Estimate between(double from, double to);

  /** The rows that the energy between two times comes from. */
  List<RowRef> rows(double from, double to);

  /** How the energy is found. */
  Method method();

  /** True if the span covers the stretch. */
  default boolean covers(double from, double to) {
    return span().low() <= from && to <= span().high();
  }

  /** A time moved into the span. */
  default double clamp(double second) {
    return Math.min(Math.max(second, span().low()), span().high());
  }
}
