package taperbook.metric.fit;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.session.RowRef;

/**
 * A straight segment of a charging curve. Intervals are two standard uncertainties to each side.
 *
 * @param kind what it is
 * @param from state of charge where it begins, %
 * @param to state of charge where it ends, %
 * @param slope change of power, kW for each per cent
 * @param slopeSeen false if too few readings lie within it to tell how steep it is: the slope is
 *     then that of the straight way between its ends
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
  /** Copies the rows. */
  public Segment {
    rows = List.copyOf(rows);
  }

  /** Width in state of charge, %. */
  public double width() {
    return to.value() - from.value();
  }

  /** Power of the line where it begins, kW. */
  public double startKilowatts() {
    return power.value() - slope.value() * width() / 2;
  }

  /** Power of the line where it ends, kW. */
  public double endKilowatts() {
    return power.value() + slope.value() * width() / 2;
  }
}
