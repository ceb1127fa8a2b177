package taperbook.input.cell;

import java.time.ZoneId;
import java.util.Optional;

/**
 * Format of clock times.
 *
 * @param writing the form of each time
 * @param zone time zone of the clock, if stated
 */
public record ClockFormat(Writing writing, Optional<ZoneId> zone) {
  /** ISO 8601 in an unknown time zone. */
  public static final ClockFormat ISO = new ClockFormat(new IsoFormat(), Optional.empty());

  /** A written form of clock times. */
  public interface Writing {
    /** Parses a time; empty if the text does not have this form. */
    Optional<ClockTime> parse(String text);

    /** Returns a description of the expected form with an example. */
    String words();
  }
}
