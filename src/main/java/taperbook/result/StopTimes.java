package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.WantedDistance;

/**
 * How long a session took from each whole per cent of charge on until the driven range had grown by
 * each multiple of a step.
 *
 * @param firstSoc charge that the first row begins at, %; each row begins 1 % above the one before
 * @param step what the distances of a row are multiples of, from 1 on
 * @param rows charging times, s, with intervals of 95 % coverage: a row ends where the session
 *     does; none is empty
 */
public record StopTimes(int firstSoc, WantedDistance step, List<List<Estimate>> rows) {
  /** Copies the lists. */
  public StopTimes {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * The charging time for a distance, s.
   *
   * @param soc charge to plug in at, %
   * @param steps number of steps of distance
   * @return the time; empty outside of what was recorded
   */
  public Optional<Estimate> seconds(int soc, int steps) {
    int row = soc - firstSoc;
    boolean known = row >= 0 && row < rows.size() && steps >= 1 && steps <= rows.get(row).size();
    return known ? Optional.of(rows.get(row).get(steps - 1)) : Optional.empty();
  }
}
