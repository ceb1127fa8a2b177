package taperbook.input.cell;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Clock times as seconds or milliseconds since 1 January 1970, UTC, without leap seconds
 * (POSIX.1-2017, section 4.16).
 *
 * @param milliseconds true for milliseconds
 */
public record EpochFormat(boolean milliseconds) implements ClockFormat.Writing {
  private static final Pattern COUNT =
      Pattern.compile(
          "[0-9]{1,14}(?:[.][0-9]{1,17})?|[0-9](?:[.][0-9]{1,17})?[eE][+]?(?:0?[0-9]|1[0-2])");
  private static final BigDecimal NANOSECONDS = BigDecimal.valueOf(1_000_000_000);

  @Override
  public Optional<ClockTime> parse(String text) {
    if (!COUNT.matcher(text).matches()) {
      return Optional.empty();
    }
    BigDecimal seconds = new BigDecimal(text).movePointLeft(milliseconds ? 3 : 0);
    int decimals = Math.max(0, seconds.scale());
    BigDecimal[] parts = seconds.divideAndRemainder(BigDecimal.ONE);
    int nanos = parts[1].multiply(NANOSECONDS).intValue();
    LocalDateTime time =
        LocalDateTime.ofEpochSecond(parts[0].longValueExact(), nanos, ZoneOffset.UTC);
    return Optional.of(
        new ClockTime(ClockTime.Kind.INSTANT, time, CellNumber.powerOfTen(-decimals)));
  }

  @Override
  public String words() {
    return milliseconds
        ? "milliseconds since 1970, as in 1773478925000"
        : "seconds since 1970, as in 1773478925";
  }
}
