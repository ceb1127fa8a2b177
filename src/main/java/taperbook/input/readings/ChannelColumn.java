package taperbook.input.readings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.input.cell.CellNumber;
import taperbook.input.cell.Column;
import taperbook.input.cell.ConvertedColumn;
import taperbook.input.cell.GroupedDigits;
import taperbook.input.cell.NumberParser;
import taperbook.input.cell.QuantityRange;
import taperbook.input.csv.CsvRow;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.RowRef;
import taperbook.session.Samples;
import taperbook.session.Trace;

/** One channel's column of readings: checks each value and collects the trace. */
final class ChannelColumn {
  /** Further decimal places are errors of binary fractions. */
  private static final int MAX_DISPLAYED_PLACES = 6;

  private static final CsvRow NONE = new CsvRow(0, List.of());

  /** A decrease of an energy counter; {@code index} is that of the reading after it. */
  private record Fall(int index, int line, String found) {}

  private final Channel channel;
  private final Column column;
  private final Unit unit;
  private final NumberParser numbers;
  private final ProblemLog log;
  private final Samples readings;
  private final List<Fall> falls = new ArrayList<>();
  private final List<Caveat> caveats = new ArrayList<>();
  private final QuantityRange range;
  private final String expected;
  private final ConvertedColumn scaling;
  private final GroupedDigits grouped;
  private final DecimalPlaces places = new DecimalPlaces();
  private double previous = Double.NaN;
  private CsvRow previousRow = NONE;

  /**
   * Creates a channel's column.
   *
   * @param rows expected number of rows, for the initial capacity
   */
  ChannelColumn(Channel channel, Column column, int rows, NumberParser numbers, ProblemLog log) {
    this.channel = channel;
    this.readings = new Samples(rows);
    this.column = column;
    this.unit = Unit.ofSymbol(column.unit()).orElseThrow();
    this.range = ChannelRange.of(channel);
    this.expected = Texts.of("input.common.number", range.words(unit));
    this.scaling = new ConvertedColumn(column.scale());
    this.grouped = new GroupedDigits(column);
    this.numbers = numbers;
    this.log = log;
  }

  Channel channel() {
    return channel;
  }

  boolean isBlankIn(CsvRow row) {
    return column.isBlankIn(row);
  }

  /**
   * Reads the row's cell, if it is not blank; keeps the value if the row's time is known.
   *
   * @param second the row's time, s; NaN if it is not known
   */
  void read(CsvRow row, double second) {
    if (isBlankIn(row)) {
      return;
    }
    Optional<CellNumber> read =
        numbers.read(row.cell(column.index()), row.line(), column.number(), expected);
    if (read.isEmpty()) {
      return;
    }
    CellNumber number = read.get();
    double amount = scaling.amount(number.value());
    double value = unit.toBase(amount);
    if (!range.contains(value)) {
      reportOutOfRange(row, amount);
      return;
    }
    if (numbers.isAmbiguous()) {
      double thousandfold = unit.toBase(scaling.amount(1000 * number.value()));
      grouped.alike(row, ChannelRange.usual(channel).contains(thousandfold));
    } else if (number.lastPlace() < 0) {
      grouped.other(number.lastPlace());
    }
    if (value < previous) {
      fell(row);
    }
    previous = value;
    previousRow = row;
    places.add(row, number.lastPlace(), value == 0);
    if (!Double.isNaN(second)) {
      add(second, value, row.line(), number.lastPlace());
    }
  }

  /**
   * Keeps a value. It does not count as displayed if columns.csv scales it, if its unit is not a
   * power of ten, or if it has more places than displays have.
   */
  private void add(double second, double value, int line, int lastPlace) {
    double one = unit.toBase(1);
    int decimals = Math.max(0, -lastPlace);
    boolean displayed = column.scale().isNone() && decimals <= MAX_DISPLAYED_PLACES;
    if (displayed && one == 1) {
      readings.addWritten(second, value, line, decimals);
    } else if (displayed && one == 1e-3) {
      readings.addWritten(second, value, line, Math.max(0, 3 - lastPlace));
    } else {
      readings.add(second, value, line);
    }
  }

  /** Returns half a unit of the finest digit, in the base unit; there must be a reading. */
  private double halfStepInBase() {
    return CellNumber.halfStepInBase(scaling.step(CellNumber.powerOfTen(places.finest())), unit);
  }

  private void reportOutOfRange(CsvRow row, double amount) {
    String written = Quoted.of(column.cellIn(row));
    boolean own = column.scale().isNone();
    log.add(
        ProblemCode.CELL_OUT_OF_RANGE,
        row.line(),
        column.number(),
        own
            ? written
            : Texts.of(
                "input.channel_column.by_columns_csv", written, plain(amount), unit.symbol()),
        expected,
        own
            ? Texts.of("input.common.correct_value_or_unit_in")
            : Texts.of("input.channel_column.correct_unit_factor_or_offset"));
  }

  /**
   * Runs the checks that need all readings: decreases of an energy counter, and thousands
   * separators.
   */
  void finish(String file) {
    grouped.finish(log);
    places.lone().ifPresent(this::reportLoneNumber);
    if (falls.isEmpty()) {
      return;
    }
    CounterResets counter =
        new CounterResets(readings.seconds(), readings.values(), 2 * halfStepInBase());
    List<CounterResets.Reset> resets = counter.find();
    double[] carried = counter.continued(resets);
    double all = carried.length == 0 ? 0 : carried[carried.length - 1] - carried[0];
    double lost = resets.stream().mapToDouble(CounterResets.Reset::maxLostKilowattHours).sum();
    boolean carry = lost <= CounterResets.MAX_LOST_SHARE * all;
    for (Fall fall : falls) {
      if (resets.stream().noneMatch(r -> r.index() == fall.index())) {
        reportDecrease(blamed(fall), Texts.of("input.common.correct_it_or_leave_cell"));
      } else if (!carry) {
        reportDecrease(
            fall, Texts.of("input.channel_column.leave_column_out_counter_began", plain(lost)));
      } else {
        reportReset(fall);
      }
    }
    if (carry && !resets.isEmpty()) {
      readings.show(carried);
      caveats.add(resetCaveat(file, resets, lost));
    }
  }

  /**
   * Returns the reading before a decrease, if energies rise more evenly without it than without the
   * reading after it.
   */
  private Fall blamed(Fall fall) {
    double[] seconds = readings.seconds();
    double[] values = readings.values();
    int i = fall.index();
    if (i < 2
        || i + 1 >= values.length
        || seconds[i] <= seconds[i - 1]
        || unevenness(i - 2, i, i + 1) >= unevenness(i - 2, i - 1, i + 1)) {
      return fall;
    }
    String found =
        Texts.of(
            "input.channel_column.before",
            plain(unit.fromBase(values[i - 1])),
            plain(unit.fromBase(values[i])));
    return new Fall(
        i - 1,
        readings.line(i - 1),
        Texts.of("input.channel_column.on_line", found, readings.line(i)));
  }

  /**
   * Returns how much the rates before and after a reading differ; infinite if one of them is
   * negative.
   */
  private double unevenness(int before, int at, int after) {
    double[] seconds = readings.seconds();
    double[] values = readings.values();
    double one = (values[at] - values[before]) / (seconds[at] - seconds[before]);
    double other = (values[after] - values[at]) / (seconds[after] - seconds[at]);
    return one > 0 && other > 0 ? Math.abs(Math.log(one / other)) : Double.POSITIVE_INFINITY;
  }

  private void reportLoneNumber(CsvRow row) {
    log.add(
        ProblemCode.NUMBER_WRITTEN_UNLIKE,
        row.line(),
        column.number(),
        Quoted.of(column.cellIn(row)),
        Texts.of("input.channel_column.as_many_decimals_as_other"),
        Texts.of("input.channel_column.look_at_film_again_and"));
  }

  /** Returns the caveats of the channel's inferences. */
  List<Caveat> caveats() {
    return caveats;
  }

  /** Returns the readings so far. */
  Samples readings() {
    return readings;
  }

  /** Returns the number of the channel's cell in each row, from 1. */
  int columnNumber() {
    return column.number();
  }

  private void reportDecrease(Fall fall, String remedy) {
    log.add(
        ProblemCode.ENERGY_FALLS,
        fall.line(),
        column.number(),
        fall.found(),
        Texts.of("input.channel_column.energy_counter_that_does_not"),
        remedy);
  }

  private void reportReset(Fall fall) {
    log.add(
        ProblemCode.ENERGY_RESET,
        fall.line(),
        column.number(),
        fall.found(),
        Texts.of("input.channel_column.energy_counter_that_does_not_begin"),
        Texts.of("input.channel_column.leave_it_or_leave_column"));
  }

  private Caveat resetCaveat(String file, List<CounterResets.Reset> resets, double lost) {
    String places =
        resets.stream()
            .limit(3)
            .map(r -> new RowRef(file, readings.line(r.index())).toString())
            .collect(Collectors.joining(", "));
    return new Caveat(
        Caveat.Kind.ENERGY_COUNTER,
        Message.of(
            "input.channel_column.counter_of_began_anew_at",
            channel.columnName(),
            resets.size() == 1
                ? Texts.of("input.common.once")
                : Texts.of("input.channel_column.times", resets.size()),
            places,
            resets.size() > 3 ? Texts.of("input.channel_column.and_later") : "",
            plain(lost)));
  }

  /** Formats an amount with at most three decimal places. */
  static String plain(double amount) {
    BigDecimal rounded = BigDecimal.valueOf(amount).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Returns true if there is no reading. */
  boolean isEmpty() {
    return readings.isEmpty();
  }

  /**
   * Returns the trace; there must be a reading.
   *
   * @param statedHalfStep half the display's step in the base unit, if stated
   * @param clockHalfStep half the clock's step, s
   */
  Trace trace(String file, OptionalDouble statedHalfStep, double clockHalfStep) {
    return new Trace(file, readings, statedHalfStep.orElseGet(this::halfStepInBase), clockHalfStep)
        .inColumn(column.number());
  }

  private void fell(CsvRow row) {
    if (channel == Channel.SOC) {
      log.add(
          ProblemCode.SOC_FALLS,
          row.line(),
          column.number(),
          column.foundAfter(row, previousRow),
          Texts.of("input.channel_column.state_of_charge_that_does"),
          Texts.of("input.channel_column.correct_it_if_it_is"));
    } else if (isCounter()) {
      falls.add(new Fall(readings.size(), row.line(), column.foundAfter(row, previousRow)));
    }
  }

  private boolean isCounter() {
    return channel == Channel.ENERGY_ADDED || channel == Channel.STATION_ENERGY;
  }
}
