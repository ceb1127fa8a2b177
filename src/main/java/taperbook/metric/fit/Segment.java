package taperbook.metric.fit;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.session.RowRef;
import taperbook.session.RowRun;

/**
 * A straight segment of a charging curve. Intervals are two standard uncertainties to each side.
 *
 * @param kind kind of the segment
 * @param from state of charge at its start, %
 * @param to state of charge at its end, %
 * @param slope change of power, kW per per cent
 * @param slopeSeen false if it contains too few readings to determine its slope, which is then that
 *     of the straight line between its ends
 * @param power mean power over its states of charge, kW
 * @param rows the readings that lie in it
 */
public record Segment(
    SegmentKind kind,
    Estimate from,
    Estimate to,
    Estimate slope,
    boolean slopeSeen,
    Estimate power,
    List<RowRef> rows) {
  public Segment {
    rows = RowRun.packed(rows);
  }

  /** Returns the width in state of charge, %. */
  public double width() {
    return to.value() - from.value();
  }

  /** Returns the power of the line at its start, kW. */
  public double startKilowatts() {
    return power.value() - slope.value() * width() / 2;
  }

  /** Returns the power of the line at its end, kW. */
  public double endKilowatts() {
    return power.value() + slope.value() * width() / 2;
  }
}
