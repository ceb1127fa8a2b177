package taperbook.input.cell;

import java.util.Optional;
import taperbook.input.csv.CsvRow;

/** Reads the cells of a time column, from the first row to the last. */
public interface TimeParser {
  /** The time in a cell that is not empty; a problem and none if there is no time. */
  Optional<TimeReading> read(String cell, int line, int column);

  /** The time in a row whose cell of it is not blank; a problem and none if there is no time. */
  default Optional<TimeReading> read(CsvRow row, Column column) {
    return read(column.cellIn(row), row.line(), column.number());
  }

  /**
   * A clock time that was written elsewhere, counted as those of the column are.
   *
   * @param late whether a time of day is the one nearest to the last row, and not to the first
   * @return the time; empty if the column has no clock times, or such of another kind
   */
  default Optional<TimeReading> counted(ClockTime clock, boolean late) {
    return Optional.empty();
  }

  /** True if the times so far are those of a local clock, which summer time sets forth and back. */
  default boolean isLocal() {
    return false;
  }
}
