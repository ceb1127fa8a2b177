package taperbook.check;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;

/**
 * Reads clock times in ISO 8601: date and time with an offset from UTC, date and time of the place,
 * or time of day, which rolls over at midnight. All cells of a column have the same form. Times
 * count from the first one.
 */
final class ClockReader implements TimeReader {
  private enum Form {
    OFFSET,
    LOCAL,
    TIME_OF_DAY
  }

  private static final Pattern CLOCK =
      Pattern.compile(
          "(?:([0-9]{4}-[0-9]{2}-[0-9]{2})[T ])?"
              + "([0-9]{2}:[0-9]{2})(?::([0-9]{2})(?:[.,]([0-9]{1,9}))?)?"
              + " ?(Z|[+-][0-9]{2}(?::?[0-9]{2})?)?");
  private static final String EXPECTED =
      "an ISO 8601 time, as in 2026-03-14T10:02:05+01:00, 2026-03-14T10:02:05 or 10:02:05";

  /**
   * A time of day that falls by more than this went past midnight; by less, it went back. One that
   * rises by more went back past midnight.
   */
  private static final Duration HALF_A_DAY = Duration.ofHours(12);

  private static final LocalDate ANY_DAY = LocalDate.EPOCH;

  private record Clock(Form form, LocalDateTime utc, double stepSeconds) {}

  private final ProblemLog log;
  private Optional<Form> form = Optional.empty();
  private int formLine;
  private LocalDateTime first = LocalDateTime.MIN;
  private LocalDateTime previous = LocalDateTime.MIN;

  ClockReader(ProblemLog log) {
    this.log = log;
  }

  @Override
  public Optional<TimeReading> read(String cell, int line, int column) {
    Optional<Clock> clock = parse(cell);
    if (clock.isEmpty()) {
      refuse(cell, line, column, EXPECTED, "write the time in one of these forms");
      return Optional.empty();
    }
    if (form.isPresent() && form.get() != clock.get().form()) {
      refuse(
          cell,
          line,
          column,
          "the same form of time as on line " + formLine,
          "write all times of the column alike");
      return Optional.empty();
    }
    LocalDateTime time = clock.get().utc();
    if (form.isEmpty()) {
      form = Optional.of(clock.get().form());
      formLine = line;
      first = time;
    } else if (clock.get().form() == Form.TIME_OF_DAY) {
      time = onTheDayOfPrevious(time);
    }
    previous = time;
    Duration sinceFirst = Duration.between(first, time);
    return Optional.of(
        new TimeReading(
            sinceFirst.getSeconds() + sinceFirst.getNano() / 1e9, clock.get().stepSeconds()));
  }

  private LocalDateTime onTheDayOfPrevious(LocalDateTime time) {
    LocalDateTime sameDay = previous.toLocalDate().atTime(time.toLocalTime());
    Duration fall = Duration.between(sameDay, previous);
    if (fall.compareTo(HALF_A_DAY) > 0) {
      return sameDay.plusDays(1);
    }
    return fall.negated().compareTo(HALF_A_DAY) > 0 ? sameDay.minusDays(1) : sameDay;
  }

  private static Optional<Clock> parse(String cell) {
    Matcher match = CLOCK.matcher(cell.toUpperCase(Locale.ROOT));
    if (!match.matches() || (match.group(1) == null && match.group(5) != null)) {
      return Optional.empty();
    }
    try {
      LocalDate day = match.group(1) == null ? ANY_DAY : LocalDate.parse(match.group(1));
      String seconds = match.group(3) == null ? "00" : match.group(3);
      String fraction = match.group(4) == null ? "" : match.group(4);
      LocalTime time =
          LocalTime.parse(
              match.group(2) + ":" + seconds + (fraction.isEmpty() ? "" : "." + fraction));
      double step = match.group(3) == null ? 60 : CellNumber.powerOfTen(-fraction.length());
      if (match.group(5) == null) {
        Form plain = match.group(1) == null ? Form.TIME_OF_DAY : Form.LOCAL;
        return Optional.of(new Clock(plain, day.atTime(time), step));
      }
      int offset = ZoneOffset.of(match.group(5)).getTotalSeconds();
      return Optional.of(new Clock(Form.OFFSET, day.atTime(time).minusSeconds(offset), step));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private void refuse(String cell, int line, int column, String expected, String remedy) {
    log.add(ProblemCode.CELL_NOT_A_TIME, line, column, Quoted.of(cell), expected, remedy);
  }
}
