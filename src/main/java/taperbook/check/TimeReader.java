package taperbook.check;

import java.util.Optional;

/** Reads the cells of a time column, from the first row to the last. */
interface TimeReader {
  /** The time in a cell that is not empty; a problem and none if there is no time. */
  Optional<TimeReading> read(String cell, int line, int column);

  /** True if the times so far are those of a local clock, which summer time sets forth and back. */
  default boolean isLocal() {
    return false;
  }
}
