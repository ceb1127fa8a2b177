package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import taperbook.input.cell.ClockFormat;
import taperbook.input.cell.IsoFormat;
import taperbook.input.cell.PatternFormat;
import taperbook.input.readings.TimeColumn;

/** Guesses which column contains the time, and its format. */
final class TimeDetector {
  private static final Set<String> WORDS =
      Set.of(
          "time",
          "elapsed",
          "timestamp",
          "clock",
          "datetime",
          "date",
          "t",
          "duration",
          "runtime",
          "uptime",
          "zeit",
          "uhrzeit",
          "zeitstempel",
          "datum",
          "seconds",
          "sec",
          "s");
  private static final Map<String, String> UNIT_WORDS =
      Map.of(
          "s", "s", "sec", "s", "secs", "s", "seconds", "s", "min", "min", "mins", "min", "minutes",
          "min", "h", "h", "hours", "h");
  private static final Set<String> MILLISECONDS = Set.of("ms", "msec", "millis", "milliseconds");
  private static final List<String> DATES =
      List.of(
          "yyyy-MM-dd",
          "yyyy/MM/dd",
          "dd.MM.yyyy",
          "d.M.yyyy",
          "dd/MM/yyyy",
          "MM/dd/yyyy",
          "M/d/yyyy");
  private static final List<String> TIMES =
      List.of(
          "HH:mm:ss",
          "HH:mm:ss.SSS",
          "HH:mm:ss,SSS",
          "HH:mm",
          "H:mm:ss",
          "hh:mm:ss a",
          "h:mm:ss a");
  private static final Pattern H_MIN_S =
      Pattern.compile("0?0:[0-5][0-9]:[0-5][0-9](?:[.,][0-9]+)?");
  private static final Pattern MIN_S = Pattern.compile("[0-9]{1,4}:[0-5][0-9](?:[.,][0-9]+)?");
  private static final int LOOKED_AT = 200;
  private static final int WRITTEN_POINTS = 12;
  private static final int NAME_POINTS = 10;

  private TimeDetector() {}

  /**
   * Returns the rows for the time, using the first column with the best match; empty if no column
   * matches.
   */
  static List<ProposedRow> of(List<ForeignColumn> columns) {
    Optional<ProposedRow> best = Optional.empty();
    for (ForeignColumn column : columns) {
      Optional<ProposedRow> row = column.isNumeric() ? counted(column) : written(column);
      if (row.isPresent() && (best.isEmpty() || row.get().points() > best.get().points())) {
        best = row;
      }
    }
    List<ProposedRow> rows = new ArrayList<>();
    best.ifPresent(rows::add);
    best.filter(r -> r.item().equals(TimeColumn.CLOCK))
        .flatMap(clock -> date(columns, clock))
        .ifPresent(rows::add);
    return rows;
  }

  private static Optional<ProposedRow> counted(ForeignColumn column) {
    List<String> words = column.words();
    boolean named = words.stream().anyMatch(w -> WORDS.contains(w) || MILLISECONDS.contains(w));
    if (column.risingShare() < 0.99 || !named || !(column.last() > column.first())) {
      return Optional.empty();
    }
    int points = NAME_POINTS;
    if (column.first() > 1e9 && column.last() < 1e10) {
      return Optional.of(clock(column, points).withFormat("epoch s"));
    }
    if (column.first() > 1e12 && column.last() < 1e13) {
      return Optional.of(clock(column, points).withFormat("epoch ms"));
    }
    boolean milliseconds = words.stream().anyMatch(MILLISECONDS::contains);
    String unit =
        words.stream()
            .filter(UNIT_WORDS::containsKey)
            .map(UNIT_WORDS::get)
            .reduce((first, last) -> last)
            .orElse("s");
    ProposedRow row =
        ProposedRow.of(TimeColumn.ELAPSED, column.index(), milliseconds ? "s" : unit, points);
    ProposedRow scaled = milliseconds ? row.withFactor("0.001") : row;
    // A count that does not start near zero was not started at plugging in.
    return Optional.of(
        column.first() > 0.5 * (column.last() - column.first())
            ? scaled.withOffset(ColumnEntryParser.LESS_FIRST)
            : scaled);
  }

  private static ProposedRow clock(ForeignColumn column, int points) {
    return ProposedRow.of(TimeColumn.CLOCK, column.index(), "", points);
  }

  private static Optional<ProposedRow> written(ForeignColumn column) {
    List<String> texts = column.texts().stream().limit(LOOKED_AT).toList();
    if (texts.isEmpty()) {
      return Optional.empty();
    }
    if (H_MIN_S.matcher(texts.get(0)).matches()) {
      return Optional.of(
          ProposedRow.of(TimeColumn.ELAPSED, column.index(), "h:min:s", WRITTEN_POINTS));
    }
    if (MIN_S.matcher(texts.get(0)).matches()
        && texts.stream().allMatch(t -> MIN_S.matcher(t).matches())) {
      return Optional.of(
          ProposedRow.of(TimeColumn.ELAPSED, column.index(), "min:s", WRITTEN_POINTS - 1));
    }
    if (reads(new IsoFormat(), texts)) {
      return Optional.of(clock(column, WRITTEN_POINTS));
    }
    return formats().stream()
        .filter(f -> PatternFormat.of(f).filter(w -> reads(w, texts)).isPresent())
        .findFirst()
        .map(f -> clock(column, WRITTEN_POINTS).withFormat(f));
  }

  private static List<String> formats() {
    List<String> formats = new ArrayList<>();
    for (String date : DATES) {
      TIMES.forEach(time -> formats.add(date + " " + time));
      TIMES.forEach(time -> formats.add(date + "T" + time));
    }
    formats.addAll(TIMES);
    return formats;
  }

  private static boolean reads(ClockFormat.Writing writing, List<String> texts) {
    return texts.stream().allMatch(t -> writing.parse(t).isPresent());
  }

  /** Finds a column of dates for a column of times of day. */
  private static Optional<ProposedRow> date(List<ForeignColumn> columns, ProposedRow clock) {
    for (ForeignColumn column : columns) {
      List<String> texts = column.texts().stream().limit(LOOKED_AT).toList();
      for (String format : DATES) {
        boolean dates =
            column.index() != clock.index()
                && !texts.isEmpty()
                && PatternFormat.of(format + " HH:mm")
                    .filter(w -> texts.stream().allMatch(t -> w.parse(t + " 00:00").isPresent()))
                    .isPresent();
        if (dates) {
          return Optional.of(
              ProposedRow.of(ColumnMapParser.DATE, column.index(), "", WRITTEN_POINTS)
                  .withFormat(format));
        }
      }
    }
    return Optional.empty();
  }
}
