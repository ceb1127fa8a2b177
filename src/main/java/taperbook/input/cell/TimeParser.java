package taperbook.input.cell;

import java.util.Optional;

/** Parses the cells of a time column, from the first row to the last. */
public interface TimeParser {
  /** Parses a cell that is not empty; reports a problem and returns empty if it is not a time. */
  Optional<TimeReading> read(String cell, int line, int column);

  /**
   * Converts a clock time from another file to the time scale of the column.
   *
   * @param late whether a time of day is the one nearest to the last row, and not to the first
   * @return the time; empty if the column has no clock times, or times of another kind
   */
  default Optional<TimeReading> counted(ClockTime clock, boolean late) {
    return Optional.empty();
  }

  /** Returns true if the times so far are local times, which daylight saving time shifts. */
  default boolean isLocal() {
    return false;
  }
}
