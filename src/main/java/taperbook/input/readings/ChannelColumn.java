package taperbook.input.readings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
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
    this.expected = "a number " + range.words(unit);
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
    if (isBlankIn(row) || !numbers.read(row, column, expected)) {
      return;
    }
    double amount = scaling.amount(numbers.value());
    double value = unit.toBase(amount);
    if (!range.contains(value)) {
      reportOutOfRange(row, amount);
      return;
    }
    if (numbers.isAmbiguous()) {
      double thousandfold = unit.toBase(scaling.amount(1000 * numbers.value()));
      grouped.alike(row, ChannelRange.usual(channel).contains(thousandfold));
    } else if (numbers.lastPlace() < 0) {
      grouped.other(numbers.lastPlace());
    }
    if (value < previous) {
      fell(row);
    }
    previous = value;
    previousRow = row;
    places.add(row, numbers.lastPlace(), value == 0);
    if (!Double.isNaN(second)) {
      add(second, value, row.line());
    }
  }

  /**
   * Keeps a value. It does not count as displayed if columns.csv scales it, if its unit is not a
   * power of ten, or if it has more places than displays have.
   */
  private void add(double second, double value, int line) {
    double one = unit.toBase(1);
    int decimals = Math.max(0, -numbers.lastPlace());
    boolean displayed = column.scale().isNone() && decimals <= MAX_DISPLAYED_PLACES;
    if (displayed && one == 1) {
      readings.addWritten(second, value, line, decimals);
    } else if (displayed && one == 1e-3) {
      readings.addWritten(second, value, line, Math.max(0, 3 - numbers.lastPlace()));
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
        own ? written : written + ", by columns.csv " + plain(amount) + " " + unit.symbol(),
        expected,
        own
            ? "correct the value, or the unit in the column head"
            : "correct unit, factor or offset in columns.csv, or the value");
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
        reportDecrease(blamed(fall), "correct it, or leave the cell empty");
      } else if (!carry) {
        reportDecrease(
            fall,
            "leave the column out: the counter began anew, up to "
                + plain(lost)
                + " kWh were not counted, and energy then follows from the power");
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
        plain(unit.fromBase(values[i - 1])) + "\" before \"" + plain(unit.fromBase(values[i]));
    return new Fall(i - 1, readings.line(i - 1), "\"" + found + "\" on line " + readings.line(i));
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
        "as many decimals as the other numbers of the column have; the step of the display is taken"
            + " from those",
        "look at the film again, and write what the display showed");
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
        "an energy counter that does not fall during charging",
        remedy);
  }

  private void reportReset(Fall fall) {
    log.add(
        ProblemCode.ENERGY_RESET,
        fall.line(),
        column.number(),
        fall.found(),
        "an energy counter that does not begin anew; it is carried on from what it showed before",
        "leave it, or leave the column out so that energy follows from the power");
  }

  private Caveat resetCaveat(String file, List<CounterResets.Reset> resets, double lost) {
    String places =
        resets.stream()
            .limit(3)
            .map(r -> new RowRef(file, readings.line(r.index())).toString())
            .collect(Collectors.joining(", "));
    return new Caveat(
        Caveat.Kind.ENERGY_COUNTER,
        "The counter of "
            + channel.columnName()
            + " began anew "
            + (resets.size() == 1 ? "once" : resets.size() + " times")
            + ", at "
            + places
            + (resets.size() > 3 ? " and later" : "")
            + ". It is carried on from what it showed before; up to "
            + plain(lost)
            + " kWh in between were not counted.");
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
          "a state of charge that does not fall during charging; the value is kept",
          "correct it, if it is a slip");
    } else if (isCounter()) {
      falls.add(new Fall(readings.size(), row.line(), column.foundAfter(row, previousRow)));
    }
  }

  private boolean isCounter() {
    return channel == Channel.ENERGY_ADDED || channel == Channel.STATION_ENERGY;
  }
}
