package taperbook.input.cell;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * A parsed clock time.
 *
 * @param kind its kind
 * @param time UTC for an instant, otherwise local time; on 1 January 1970 if it has no date
 * @param stepSeconds value of one unit of the last digit, s
 */
public record ClockTime(Kind kind, LocalDateTime time, double stepSeconds) {
  /** Placeholder for the date of a time of day. */
  static final LocalDate ANY_DAY = LocalDate.EPOCH;

  /** Kinds of clock times. */
  public enum Kind {
    /** A point in time. */
    INSTANT,
    /** Local date and time. */
    LOCAL,
    /** Time of day. */
    TIME_OF_DAY
  }
}
