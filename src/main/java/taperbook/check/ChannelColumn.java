package taperbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import taperbook.model.Channel;
import taperbook.model.Trace;
import taperbook.model.Unit;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;
import taperbook.read.CsvRow;

/** One channel's column of readings: checks each value and gathers the trace. */
final class ChannelColumn {
  /** One reading; {@code value} is in the channel's base unit. */
  private record Reading(double second, double value, int line) {}

  private final Channel channel;
  private final Column column;
  private final Unit unit;
  private final NumberReader numbers;
  private final ProblemLog log;
  private final List<Reading> readings = new ArrayList<>();
  private int lastPlace = Integer.MAX_VALUE;
  private double previous = Double.NaN;
  private String previousCell = "";
  private int previousLine;

  ChannelColumn(Channel channel, Column column, NumberReader numbers, ProblemLog log) {
    this.channel = channel;
    this.column = column;
    this.unit = Unit.ofSymbol(column.unit()).orElseThrow();
    this.numbers = numbers;
    this.log = log;
  }

  Channel channel() {
    return channel;
  }

  boolean isBlankIn(CsvRow row) {
    return row.cell(column.index()).isEmpty();
  }

  /** Reads the row's cell, if it is not blank; keeps the value if the row's time is known. */
  void read(CsvRow row, OptionalDouble second) {
    if (isBlankIn(row)) {
      return;
    }
    String cell = row.cell(column.index());
    QuantityRange range = ChannelRange.of(channel);
    String expected = "a number " + range.words(unit);
    Optional<CellNumber> number = numbers.read(cell, row.line(), column.number(), expected);
    if (number.isEmpty()) {
      return;
    }
    double value = unit.toBase(number.get().value());
    if (!range.contains(value)) {
      log.add(
          ProblemCode.CELL_OUT_OF_RANGE,
          row.line(),
          column.number(),
          Quoted.of(cell),
          expected,
          "correct the value, or the unit in the column head");
      return;
    }
    compare(value, cell, row.line());
    lastPlace = Math.min(lastPlace, number.get().lastPlace());
    second.ifPresent(s -> readings.add(new Reading(s, value, row.line())));
  }

  /** True if there is no reading to make a trace of. */
  boolean isEmpty() {
    return readings.isEmpty();
  }

  /**
   * The trace; there must be a reading.
   *
   * @param statedHalfStep half the display's step in the base unit, if it is stated
   * @param clockHalfStep half the clock's step, s
   */
  Trace trace(String file, OptionalDouble statedHalfStep, double clockHalfStep) {
    return new Trace(
        file,
        readings.stream().mapToDouble(Reading::second).toArray(),
        readings.stream().mapToDouble(Reading::value).toArray(),
        readings.stream().mapToInt(Reading::line).toArray(),
        statedHalfStep.orElse(CellNumber.halfStepInBase(CellNumber.powerOfTen(lastPlace), unit)),
        clockHalfStep);
  }

  private void compare(double value, String cell, int line) {
    if (value < previous) {
      String found =
          Quoted.of(cell) + " after " + Quoted.of(previousCell) + " on line " + previousLine;
      switch (channel) {
        case SOC ->
            log.add(
                ProblemCode.SOC_FALLS,
                line,
                column.number(),
                found,
                "a state of charge that does not fall during charging; the value is kept",
                "correct it, if it is a slip");
        case ENERGY_ADDED, STATION_ENERGY ->
            log.add(
                ProblemCode.ENERGY_FALLS,
                line,
                column.number(),
                found,
                "an energy counter that does not fall during charging",
                "correct it, or leave the cell empty");
        default -> {}
      }
    }
    previous = value;
    previousCell = cell;
    previousLine = line;
  }
}
