package taperbook.input.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.ClockTime;
import taperbook.input.cell.Column;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.cell.Columns;
import taperbook.input.cell.NumberParser;
import taperbook.input.cell.ShortRows;
import taperbook.input.cell.TimeParser;
import taperbook.input.cell.TimeReading;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.Review;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Parses the rows of {@code readings.csv} in order. */
public final class ReadingsParser {
  public static final String NOTE = "note";
  public static final String AS_READ = "as read";
  private static final int MIN_ROWS = 2;

  private static final List<Channel> NEEDED =
      List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED);
  private static final Map<Channel, ConditionItem> STATED_STEPS =
      Map.of(
          Channel.SOC, ConditionItem.SOC_RESOLUTION,
          Channel.POWER, ConditionItem.POWER_RESOLUTION,
          Channel.ENERGY_ADDED, ConditionItem.ENERGY_RESOLUTION);

  private final CsvTable table;
  private final ProblemLog log;
  private final Columns columns;
  private final Optional<Column> noteColumn;
  private final Optional<AsReadColumn> asRead;
  private final Optional<TimeColumn> time;
  private final List<ChannelColumn> channels;
  private final List<Session.Note> notes = new ArrayList<>();
  private final List<Caveat> caveats = new ArrayList<>();

  /** Creates a parser for readings whose headers name the columns. */
  public ReadingsParser(CsvTable table, ProblemLog log) {
    this(
        table,
        Columns.of(table, specs(), log),
        NumberParser.forCells(table.takesDecimalComma(), log),
        log);
  }

  /** Creates a parser for readings with these columns. */
  public ReadingsParser(CsvTable table, Columns columns, NumberParser numbers, ProblemLog log) {
    this.table = table;
    this.log = log;
    this.columns = columns;
    this.noteColumn = columns.find(NOTE);
    this.asRead = columns.find(AS_READ).map(c -> new AsReadColumn(c, table.file(), log));
    this.time = TimeColumn.of(table, columns, numbers, log);
    this.channels =
        Arrays.stream(Channel.values())
            .flatMap(
                c ->
                    columns.find(c.columnName()).stream()
                        .map(
                            column ->
                                new ChannelColumn(c, column, table.rows().size(), numbers, log)))
            .toList();
  }

  /** Returns the possible columns of readings. */
  public static List<ColumnSpec> specs() {
    List<ColumnSpec> specs = new ArrayList<>();
    specs.add(ColumnSpec.elapsed(TimeColumn.ELAPSED));
    specs.add(TimeColumn.clockSpec());
    for (Channel channel : Channel.values()) {
      specs.add(ColumnSpec.of(channel.columnName(), channel.quantity()));
    }
    specs.add(ColumnSpec.plain(NOTE));
    specs.add(ColumnSpec.plain(AS_READ));
    return specs;
  }

  /** Reads all rows and reports all problems. */
  public void check() {
    if (NEEDED.stream().noneMatch(c -> columns.names(c.columnName()))) {
      columns.missing(
          "at least one of the columns \"soc [%]\", \"power [kW]\", \"energy added [kWh]\"",
          "add one of them");
    }
    ShortRows.report(table, log);
    table.rows().forEach(this::read);
    channels.forEach(c -> c.finish(table.file()));
    channels.stream().filter(c -> c.channel() == Channel.POWER).forEach(this::pauses);
    if (time.isPresent() && time.get().written() < MIN_ROWS) {
      tooFew(time.get().written() == 1 ? "one row with a time" : "no row with a time");
    } else if (!log.hasErrors() && channels.stream().allMatch(this::isEmptyOrExtra)) {
      tooFew("no reading of state of charge, power or energy");
    }
    if (!log.hasErrors()) {
      channels.forEach(c -> caveats.addAll(c.caveats()));
      caveats.addAll(time.orElseThrow().gaps().report(table.file(), channels, log));
    }
  }

  /** Returns the path of the file. */
  public String file() {
    return table.file();
  }

  /** Reports rows that are noted as a pause although power flows. */
  private void pauses(ChannelColumn power) {
    List<Session.Note> pauses = notes.stream().filter(Session.Note::isPause).toList();
    int[] lines = power.readings().lines();
    double[] kilowatts = power.readings().values();
    for (Session.Note note : pauses) {
      int at = Arrays.binarySearch(lines, note.row().line());
      if (at >= 0 && kilowatts[at] > Session.MAX_AT_REST_KILOWATTS) {
        log.add(
            ProblemCode.PAUSE_WITH_POWER,
            note.row().line(),
            power.columnNumber(),
            ChannelColumn.plain(kilowatts[at]) + " kW beside the note " + Quoted.of(note.text()),
            "no power, or an empty cell, in a row whose note begins with \"pause\"; it is not taken"
                + " as a pause",
            "write \"pause\" beside the rows in which charging stood still, or begin the note"
                + " with another word");
      }
    }
  }

  /** Returns the caveats of the recording; only after a check without errors. */
  public List<Caveat> caveats() {
    return caveats;
  }

  /** Returns first and last time, s since plugging in; only after a check without errors. */
  public Interval recorded() {
    return time.orElseThrow().recorded();
  }

  /** As {@link TimeParser#counted}; only after a check without errors. */
  public Optional<TimeReading> counted(ClockTime clock, boolean late) {
    return time.orElseThrow().counted(clock, late);
  }

  /** Returns the tester's statements about rechecked readings. */
  public List<Review.AsRead> asRead() {
    return asRead.map(AsReadColumn::stated).orElse(List.of());
  }

  public List<Session.Note> notes() {
    return notes;
  }

  /** Returns the traces by channel; only after a check without errors. */
  public Map<Channel, Trace> traces(Facts<ConditionItem> conditions) {
    double clockHalfStep =
        halfStep(conditions, ConditionItem.CLOCK_RESOLUTION)
            .orElse(time.orElseThrow().stepSeconds() / 2);
    Map<Channel, Trace> traces = new EnumMap<>(Channel.class);
    for (ChannelColumn column : channels) {
      if (!column.isEmpty()) {
        Optional<ConditionItem> item = Optional.ofNullable(STATED_STEPS.get(column.channel()));
        OptionalDouble stated =
            item.map(i -> halfStep(conditions, i)).orElse(OptionalDouble.empty());
        traces.put(column.channel(), column.trace(table.file(), stated, clockHalfStep));
      }
    }
    return traces;
  }

  private static OptionalDouble halfStep(Facts<ConditionItem> conditions, ConditionItem item) {
    Optional<Estimate> step = conditions.amount(item);
    return step.isPresent() ? OptionalDouble.of(step.get().value() / 2) : OptionalDouble.empty();
  }

  private void read(CsvRow row) {
    boolean noted = noteColumn.isPresent() && !row.isBlankAt(noteColumn.get().index());
    if (!noted && !hasTime(row) && channels.stream().allMatch(c -> c.isBlankIn(row))) {
      return;
    }
    double second = time.isPresent() ? time.get().read(row) : Double.NaN;
    Set<Channel> doubtful = asRead.map(a -> a.doubtful(row, channels)).orElse(Set.of());
    for (int i = 0; i < channels.size(); i++) {
      if (!doubtful.contains(channels.get(i).channel())) {
        channels.get(i).read(row, second);
      }
    }
    if (noted && !Double.isNaN(second)) {
      String note = row.cell(noteColumn.get().index());
      RowRef place = new RowRef(table.file(), row.line());
      notes.add(new Session.Note(second, note, place));
    }
  }

  private boolean hasTime(CsvRow row) {
    return time.isPresent() && !time.get().isBlankIn(row);
  }

  private boolean isEmptyOrExtra(ChannelColumn column) {
    return column.isEmpty() || !NEEDED.contains(column.channel());
  }

  private void tooFew(String found) {
    log.add(
        ProblemCode.TOO_FEW_READINGS,
        found,
        "at least two rows with a time, and readings of state of charge, power or energy",
        "write more of the session down");
  }
}
