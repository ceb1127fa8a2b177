package taperbook.input.cell;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;

/**
 * Parses clock times: instants, local date and time, or time of day, which rolls over at midnight.
 * All cells of a column have the same kind. Times count from the first one.
 */
public final class ClockParser implements TimeParser {
  /**
   * A time of day that decreases by more than this has passed midnight; one that decreases by less
   * went back. One that increases by more went back past midnight.
   */
  private static final Duration HALF_A_DAY = Duration.ofHours(12);

  private final ClockFormat form;
  private final ProblemLog log;
  private Optional<ClockTime.Kind> kind = Optional.empty();
  private int firstLine;
  private LocalDateTime first = LocalDateTime.MIN;
  private LocalDateTime previous = LocalDateTime.MIN;

  public ClockParser(ClockFormat form, ProblemLog log) {
    this.form = form;
    this.log = log;
  }

  @Override
  public boolean isLocal() {
    return kind.isPresent() && kind.get() != ClockTime.Kind.INSTANT && form.zone().isEmpty();
  }

  @Override
  public Optional<TimeReading> read(String cell, int line, int column) {
    Optional<ClockTime> clock = form.writing().parse(cell);
    if (clock.isEmpty()) {
      String remedy =
          form.writing() instanceof IsoFormat
              ? "write the time in one of these forms"
              : "state the format in columns.csv that the times have, or mark what is missing there";
      refuse(cell, line, column, form.writing().words(), remedy);
      return Optional.empty();
    }
    if (kind.isPresent() && kind.get() != clock.get().kind()) {
      refuse(
          cell,
          line,
          column,
          "the same form of time as on line " + firstLine,
          "write all times of the column alike");
      return Optional.empty();
    }
    return placed(clock.get(), cell, line, column)
        .map(time -> counted(clock.get(), time, cell, line, column));
  }

  /** Returns the time in a time zone without gaps, if the clock can have shown it. */
  private Optional<LocalDateTime> placed(ClockTime clock, String cell, int line, int column) {
    if (form.zone().isEmpty() || clock.kind() == ClockTime.Kind.INSTANT) {
      return Optional.of(clock.time());
    }
    if (clock.kind() == ClockTime.Kind.TIME_OF_DAY) {
      refuse(
          cell,
          line,
          column,
          "a date with the time, as columns.csv states a time zone",
          "map a column for the date, or take the time zone away");
      return Optional.empty();
    }
    return inZone(form.zone().get(), clock.time(), cell, line, column);
  }

  private Optional<LocalDateTime> inZone(
      ZoneId zone, LocalDateTime local, String cell, int line, int column) {
    List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
    if (offsets.isEmpty()) {
      refuse(
          cell,
          line,
          column,
          "a time that clocks in " + zone.getId() + " showed; they skipped this one",
          "correct the time zone in columns.csv, or the time");
      return Optional.empty();
    }
    // In the repeated hour, uses the earlier offset unless time would go back.
    return Optional.of(
        offsets.stream()
            .map(offset -> local.minusSeconds(offset.getTotalSeconds()))
            .filter(utc -> !utc.isBefore(previous))
            .findFirst()
            .orElse(local.minusSeconds(offsets.get(0).getTotalSeconds())));
  }

  @Override
  public Optional<TimeReading> counted(ClockTime clock, boolean late) {
    if (kind.isEmpty() || kind.get() != clock.kind()) {
      return Optional.empty();
    }
    LocalDateTime time = clock.time();
    if (clock.kind() == ClockTime.Kind.TIME_OF_DAY) {
      time = nearest(time, late ? previous : first);
    } else if (clock.kind() == ClockTime.Kind.LOCAL && form.zone().isPresent()) {
      time = time.atZone(form.zone().get()).withZoneSameInstant(ZoneOffset.UTC).toLocalDateTime();
    }
    return Optional.of(new TimeReading(secondsSinceFirst(time), clock.stepSeconds()));
  }

  private double secondsSinceFirst(LocalDateTime time) {
    Duration sinceFirst = Duration.between(first, time);
    return sinceFirst.getSeconds() + sinceFirst.getNano() / 1e9;
  }

  private TimeReading counted(
      ClockTime clock, LocalDateTime placed, String cell, int line, int column) {
    LocalDateTime time = placed;
    if (kind.isEmpty()) {
      kind = Optional.of(clock.kind());
      firstLine = line;
      first = time;
    } else if (clock.kind() == ClockTime.Kind.TIME_OF_DAY) {
      time = nearest(time, previous);
      if (time.toLocalDate().isAfter(previous.toLocalDate())) {
        reportMidnight(cell, line, column);
      }
    }
    previous = time;
    return new TimeReading(secondsSinceFirst(time), clock.stepSeconds());
  }

  /** Returns a time of day on the date that brings it nearest to another time. */
  private static LocalDateTime nearest(LocalDateTime time, LocalDateTime other) {
    LocalDateTime sameDay = other.toLocalDate().atTime(time.toLocalTime());
    Duration fall = Duration.between(sameDay, other);
    if (fall.compareTo(HALF_A_DAY) > 0) {
      return sameDay.plusDays(1);
    }
    return fall.negated().compareTo(HALF_A_DAY) > 0 ? sameDay.minusDays(1) : sameDay;
  }

  private void reportMidnight(String cell, int line, int column) {
    log.add(
        ProblemCode.CLOCK_PAST_MIDNIGHT,
        line,
        column,
        Quoted.of(cell) + " after " + Quoted.of(previous.toLocalTime().toString()),
        "a time of day that rises; this one is taken for the next day",
        "leave it, if the session went past midnight");
  }

  private void refuse(String cell, int line, int column, String expected, String remedy) {
    log.add(ProblemCode.CELL_NOT_A_TIME, line, column, Quoted.of(cell), expected, remedy);
  }
}
