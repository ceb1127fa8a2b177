package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.WantedDistance;

/**
 * Charging times from each whole per cent of charge until the driven range has increased by each
 * multiple of a step.
 *
 * @param firstSoc state of charge at the start of the first row, %; each row starts 1 % above the
 *     previous one
 * @param step the distances of a row are multiples of this step, from 1 on
 * @param rows charging times, s, with 95 % coverage intervals: a row ends where the session does;
 *     none is empty
 */
public record StopTimes(int firstSoc, WantedDistance step, List<List<Estimate>> rows) {
  public StopTimes {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * Returns the charging time for a distance, s.
   *
   * @param soc state of charge at plug-in, %
   * @param steps number of steps of distance
   * @return the time; empty outside the recorded range
   */
  public Optional<Estimate> seconds(int soc, int steps) {
    int row = soc - firstSoc;
    boolean known = row >= 0 && row < rows.size() && steps >= 1 && steps <= rows.get(row).size();
    return known ? Optional.of(rows.get(row).get(steps - 1)) : Optional.empty();
  }
}
