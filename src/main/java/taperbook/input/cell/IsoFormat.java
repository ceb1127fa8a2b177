package taperbook.input.cell;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Clock times in ISO 8601: date and time with an offset from UTC, local date and time, or time of
 * day.
 */
public final class IsoFormat implements ClockFormat.Writing {
  private static final Pattern CLOCK =
      Pattern.compile(
          "(?:([0-9]{4}-[0-9]{2}-[0-9]{2})[T ])?"
              + "([0-9]{2}:[0-9]{2})(?::([0-9]{2})(?:[.,]([0-9]{1,9}))?)?"
              + " ?(Z|[+-][0-9]{2}(?::?[0-9]{2})?)?");

  @Override
  public Optional<ClockTime> parse(String text) {
    Matcher match = CLOCK.matcher(text.toUpperCase(Locale.ROOT));
    if (!match.matches() || (match.group(1) == null && match.group(5) != null)) {
      return Optional.empty();
    }
    try {
      LocalDate day = match.group(1) == null ? ClockTime.ANY_DAY : LocalDate.parse(match.group(1));
      String seconds = match.group(3) == null ? "00" : match.group(3);
      String fraction = match.group(4) == null ? "" : match.group(4);
      LocalTime time =
          LocalTime.parse(
              match.group(2) + ":" + seconds + (fraction.isEmpty() ? "" : "." + fraction));
      double step = match.group(3) == null ? 60 : CellNumber.powerOfTen(-fraction.length());
      if (match.group(5) == null) {
        ClockTime.Kind plain =
            match.group(1) == null ? ClockTime.Kind.TIME_OF_DAY : ClockTime.Kind.LOCAL;
        return Optional.of(new ClockTime(plain, day.atTime(time), step));
      }
      int offset = ZoneOffset.of(match.group(5)).getTotalSeconds();
      return Optional.of(
          new ClockTime(ClockTime.Kind.INSTANT, day.atTime(time).minusSeconds(offset), step));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  @Override
  public String words() {
    return "an ISO 8601 time, as in 2026-03-14T10:02:05+01:00, 2026-03-14T10:02:05 or 10:02:05";
  }
}
