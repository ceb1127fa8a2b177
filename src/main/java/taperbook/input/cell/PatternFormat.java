package taperbook.input.cell;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Clock times with a pattern of a few letters, which have the meaning of {@link DateTimeFormatter}:
 * {@code yyyy yy MM M dd d HH H hh h mm ss S a XXX}, and {@code T} for itself.
 */
public final class PatternFormat implements ClockFormat.Writing {
  /** The permitted pattern letters. */
  public static final String LETTERS = "yyyy yy MM M dd d HH H hh h mm ss S a XXX T";

  private static final Pattern PIECE =
      Pattern.compile("(yyyy|yy|MM?|dd?|HH?|hh?|mm|ss|S{1,9}|a|XXX|T)|([^A-Za-z'\\[\\]{}#]+)");
  private static final LocalDateTime EXAMPLE = LocalDateTime.of(2026, 3, 14, 10, 2, 5);

  private final String pattern;
  private final DateTimeFormatter formatter;

  private PatternFormat(String pattern, DateTimeFormatter formatter) {
    this.pattern = pattern;
    this.formatter = formatter;
  }

  /** Returns the format for a pattern, if it defines a time and contains only permitted letters. */
  public static Optional<PatternFormat> of(String pattern) {
    StringBuilder translated = new StringBuilder();
    Matcher piece = PIECE.matcher(pattern);
    int end = 0;
    while (piece.find() && piece.start() == end) {
      end = piece.end();
      String letters = piece.group(1);
      if (letters == null) {
        translated.append('\'').append(piece.group(2)).append('\'');
      } else {
        // In strict mode the year of the era requires an era; the proleptic year does not.
        translated.append(letters.equals("T") ? "'T'" : letters.replace('y', 'u'));
      }
    }
    boolean date = Pattern.compile("y.*M.*d|d.*M.*y|M.*d.*y").matcher(pattern).find();
    boolean partOfDate = Pattern.compile("[yMd]").matcher(pattern).find();
    boolean time = Pattern.compile("H.*mm|h.*mm.*a").matcher(pattern).find();
    if (end < pattern.length() || !time || partOfDate != date || (pattern.contains("X") && !date)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PatternFormat(pattern, formatter(translated.toString())));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static DateTimeFormatter formatter(String translated) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(translated)
        .toFormatter(Locale.ROOT)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** Returns true if the pattern contains the date. */
  public boolean hasDate() {
    return pattern.contains("d");
  }

  @Override
  public Optional<ClockTime> parse(String text) {
    try {
      TemporalAccessor parsed = formatter.parse(text);
      double step =
          pattern.contains("S")
              ? CellNumber.powerOfTen(-(int) pattern.chars().filter(c -> c == 'S').count())
              : pattern.contains("ss") ? 1 : 60;
      if (pattern.contains("X")) {
        LocalDateTime utc =
            OffsetDateTime.from(parsed).withOffsetSameInstant(ZoneOffset.UTC).toLocalDateTime();
        return Optional.of(new ClockTime(ClockTime.Kind.INSTANT, utc, step));
      }
      LocalTime time = LocalTime.from(parsed);
      return Optional.of(
          Optional.ofNullable(parsed.query(TemporalQueries.localDate()))
              .map(day -> new ClockTime(ClockTime.Kind.LOCAL, day.atTime(time), step))
              .orElse(
                  new ClockTime(ClockTime.Kind.TIME_OF_DAY, ClockTime.ANY_DAY.atTime(time), step)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  @Override
  public String words() {
    return "a time after "
        + pattern
        + ", as in "
        + formatter.format(EXAMPLE.atOffset(ZoneOffset.UTC));
  }
}
