package taperbook.input.cell;

import java.time.ZoneId;
import java.util.Optional;

/**
 * How clock times are written.
 *
 * @param writing the form of each time
 * @param zone where the clock stands, if that is stated
 */
public record ClockFormat(Writing writing, Optional<ZoneId> zone) {
  /** ISO 8601, of a place that is not stated. */
  public static final ClockFormat ISO = new ClockFormat(new IsoFormat(), Optional.empty());

  /** A form of writing clock times. */
  public interface Writing {
    /** The time that a text tells, if it has this form. */
    Optional<ClockTime> parse(String text);

    /** What is expected, in words and with an example. */
    String words();
  }
}
