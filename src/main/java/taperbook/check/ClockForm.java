package taperbook.check;

import java.time.ZoneId;
import java.util.Optional;

/**
 * How clock times are written.
 *
 * @param writing the form of each time
 * @param zone where the clock stands, if that is stated
 */
record ClockForm(Writing writing, Optional<ZoneId> zone) {
  /** ISO 8601, of a place that is not stated. */
  static final ClockForm ISO = new ClockForm(new IsoWriting(), Optional.empty());

  /** A form of writing clock times. */
  interface Writing {
    /** The time that a text tells, if it has this form. */
    Optional<Clock> parse(String text);

    /** What is expected, in words and with an example. */
    String words();
  }
}
