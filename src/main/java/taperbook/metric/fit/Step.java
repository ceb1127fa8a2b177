package taperbook.metric.fit;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.session.RowRef;

/**
 * A jump of power between two segments.
 *
 * @param after index of the segment before it
 * @param soc its place: the middle of the gap between the two adjacent readings, %, with the gap
 *     and half a step of the display to each side as bounds
 * @param height change of power, kW, below zero for a fall, two standard uncertainties to each side
 *     wherever it lies in the gap
 * @param rows the adjacent readings
 */
public record Step(int after, Estimate soc, Estimate height, List<RowRef> rows) {
  public Step {
    rows = List.copyOf(rows);
  }
}
