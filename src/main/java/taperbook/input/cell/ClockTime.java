package taperbook.input.cell;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * A clock time as it was written.
 *
 * @param kind what it tells
 * @param time in UTC for an instant, else as the clock showed it; of 1 January 1970 without a date
 * @param stepSeconds one unit of the last digit written, s
 */
public record ClockTime(Kind kind, LocalDateTime time, double stepSeconds) {
  /** Stands for the date that a time of day does not tell. */
  static final LocalDate ANY_DAY = LocalDate.EPOCH;

  /** What a clock time tells. */
  public enum Kind {
    /** A point in time. */
    INSTANT,
    /** Date and time of the place. */
    LOCAL,
    /** Time of day. */
    TIME_OF_DAY
  }
}
