package taperbook.input.readings;

import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.ClockParser;
import taperbook.input.cell.ClockTime;
import taperbook.input.cell.Column;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.cell.Columns;
import taperbook.input.cell.ElapsedParser;
import taperbook.input.cell.NumberParser;
import taperbook.input.cell.TimeParser;
import taperbook.input.cell.TimeReading;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.quantity.Interval;
import taperbook.session.Samples;

/**
 * The time column of readings: checks that time does not go back, and determines its finest step.
 */
public final class TimeColumn {
  public static final String ELAPSED = "elapsed";
  public static final String CLOCK = "clock";

  /** Finer digits of a time are arithmetic noise. */
  private static final double FINEST_SECONDS = 1e-6;

  private final Column column;
  private final TimeParser reader;
  private final ProblemLog log;
  private int written;
  private double stepSeconds = Double.POSITIVE_INFINITY;
  private double firstSecond = Double.NaN;
  private double previousSecond = Double.NaN;
  private CsvRow previousRow;
  private final Samples times;

  private TimeColumn(CsvTable table, Column column, TimeParser reader, ProblemLog log) {
    this.previousRow = table.header();
    this.times = new Samples(table.rows().size());
    this.column = column;
    this.reader = reader;
    this.log = log;
  }

  public static ColumnSpec clockSpec() {
    return new ColumnSpec(CLOCK, List.of(ColumnSpec.CLOCK_UNIT));
  }

  /**
   * Returns the time column of a file; reports a problem and returns empty unless there is exactly
   * one.
   */
  static Optional<TimeColumn> of(
      CsvTable table, Columns columns, NumberParser numbers, ProblemLog log) {
    if (!columns.names(ELAPSED) && !columns.names(CLOCK)) {
      columns.missing(
          Texts.of("input.time_column.column_for_time_as_in", Quoted.of("elapsed [min:s]")),
          Texts.of("input.time_column.add_column_of_elapsed_times", Quoted.of(clockSpec().head())));
    } else if (columns.names(ELAPSED) && columns.names(CLOCK)) {
      log.add(
          ProblemCode.COLUMN_TWICE,
          table.header().line(),
          0,
          Texts.of("input.time_column.both_elapsed_and_clock_column"),
          Texts.of("input.time_column.one_column_for_time"),
          Texts.of("input.common.take_one_of_them_away"));
    }
    Optional<TimeColumn> elapsed =
        columns
            .find(ELAPSED)
            .map(
                c ->
                    new TimeColumn(
                        table, c, new ElapsedParser(c.unit(), c.scale(), numbers, log), log));
    return elapsed.or(
        () ->
            columns
                .find(CLOCK)
                .map(c -> new TimeColumn(table, c, new ClockParser(c.clock(), log), log)));
  }

  /** As {@link TimeParser#counted}. */
  Optional<TimeReading> counted(ClockTime clock, boolean late) {
    return reader.counted(clock, late);
  }

  boolean isBlankIn(CsvRow row) {
    return column.isBlankIn(row);
  }

  /** Returns the time of a row, s; NaN, after a problem, if it has no valid time. */
  double read(CsvRow row) {
    if (isBlankIn(row)) {
      log.add(
          ProblemCode.TIME_MISSING,
          row.line(),
          column.number(),
          Texts.of("input.time_column.readings_without_time"),
          Texts.of("input.time_column.time_in_each_row_that"),
          Texts.of("input.time_column.write_time_or_take_row"));
      return Double.NaN;
    }
    written++;
    Optional<TimeReading> time = reader.read(column.cellIn(row), row.line(), column.number());
    if (time.isEmpty()) {
      return Double.NaN;
    }
    follow(time.get(), row);
    return time.get().seconds();
  }

  /** Returns the number of rows with a time, valid or not. */
  int written() {
    return written;
  }

  /** Returns the finest step, s; infinite if no time was read. */
  double stepSeconds() {
    return stepSeconds;
  }

  /** Returns first and last time; there must be a time. */
  Interval recorded() {
    return new Interval(firstSecond, previousSecond);
  }

  private void follow(TimeReading time, CsvRow row) {
    if (time.seconds() < previousSecond) {
      reportBackwardStep(time.seconds(), row);
    }
    if (Double.isNaN(firstSecond)) {
      firstSecond = time.seconds();
    }
    stepSeconds = Math.min(stepSeconds, Math.max(FINEST_SECONDS, time.stepSeconds()));
    previousSecond = time.seconds();
    times.add(previousSecond, previousSecond, row.line());
    previousRow = row;
  }

  private void reportBackwardStep(double second, CsvRow row) {
    boolean summerTimeEnds =
        reader.isLocal() && DaylightSavingJump.isBackwardJump(previousSecond, second);
    log.add(
        ProblemCode.TIME_GOES_BACK,
        row.line(),
        column.number(),
        column.foundAfter(row, previousRow),
        summerTimeEnds
            ? Texts.of("input.time_column.time_that_is_not_before")
            : Texts.of("input.time_column.time_that_is_not_before_one"),
        summerTimeEnds
            ? Texts.of("input.common.state_time_zone_in_columns")
            : Texts.of("input.time_column.correct_time_or_put_rows"));
  }

  /** Returns the gaps and jumps of the recording as a whole; only after a check without errors. */
  RecordingGaps gaps() {
    return new RecordingGaps(times, column.number(), reader.isLocal());
  }
}
