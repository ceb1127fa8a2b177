package taperbook.input.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvRow;
import taperbook.quantity.Unit;

/** Parses elapsed times: minutes and seconds, hours with both, or a number of one unit. */
public final class ElapsedParser implements TimeParser {
  private static final Pattern MIN_S =
      Pattern.compile("()([0-9]{1,4}):([0-5][0-9])([.,][0-9]{1,9})?");
  private static final Pattern H_MIN_S =
      Pattern.compile("([0-9]{1,2}):([0-5][0-9]):([0-5][0-9])([.,][0-9]{1,9})?");

  /** Maximum elapsed time: a hundred hours. */
  private static final QuantityRange RANGE = QuantityRange.from(0, 360_000);

  private final String unit;
  private final NumberParser numbers;
  private final ConvertedColumn scaling;
  private final Optional<Unit> plain;
  private final String expectedNumber;
  private final ProblemLog log;

  /**
   * Creates a parser for one column.
   *
   * @param unit one of {@link ColumnSpec#ELAPSED_UNITS}
   */
  public ElapsedParser(String unit, NumberParser numbers, ProblemLog log) {
    this(unit, LinearConversion.NONE, numbers, log);
  }

  /** Creates a parser for one column whose numbers, or seconds, are scaled. */
  public ElapsedParser(String unit, LinearConversion scale, NumberParser numbers, ProblemLog log) {
    this.unit = unit;
    this.plain = Unit.ofSymbol(unit);
    this.expectedNumber = plain.map(u -> "a time " + RANGE.words(u)).orElse("");
    this.scaling = new ConvertedColumn(scale);
    this.numbers = numbers;
    this.log = log;
  }

  @Override
  public Optional<TimeReading> read(String cell, int line, int column) {
    return switch (unit) {
      case "min:s" -> readColons(MIN_S, cell, line, column);
      case "h:min:s" -> readColons(H_MIN_S, cell, line, column);
      default -> readNumber(plain.orElseThrow(), cell, line, column);
    };
  }

  @Override
  public Optional<TimeReading> read(CsvRow row, Column column) {
    if (plain.isEmpty() || column.dateIndex().isPresent()) {
      return TimeParser.super.read(row, column);
    }
    if (!numbers.read(row, column, expectedNumber)) {
      return Optional.empty();
    }
    TimeReading time =
        time(plain.get(), numbers.value(), CellNumber.powerOfTen(numbers.lastPlace()));
    if (RANGE.contains(time.seconds())) {
      return Optional.of(time);
    }
    reportOutOfRange(row.cell(column.index()), row.line(), column.number(), expectedNumber);
    return Optional.empty();
  }

  private Optional<TimeReading> readNumber(Unit in, String cell, int line, int column) {
    return numbers
        .read(cell, line, column, expectedNumber)
        .map(n -> time(in, n.value(), n.step()))
        .filter(t -> inRange(t, cell, line, column, expectedNumber));
  }

  private TimeReading time(Unit in, double value, double step) {
    return new TimeReading(in.toBase(scaling.amount(value)), in.toBase(scaling.step(step)));
  }

  private Optional<TimeReading> readColons(Pattern form, String cell, int line, int column) {
    Matcher match = form.matcher(cell);
    boolean matches = match.matches();
    String fraction = matches && match.group(4) != null ? match.group(4) : "";
    if (!matches || (fraction.startsWith(",") && !numbers.commaAllowed())) {
      log.add(ProblemCode.CELL_NOT_A_TIME, line, column, Quoted.of(cell), expected(), remedy(cell));
      return Optional.empty();
    }
    double hours = match.group(1).isEmpty() ? 0 : Integer.parseInt(match.group(1));
    double seconds = Double.parseDouble(match.group(3) + fraction.replace(',', '.'));
    double step = CellNumber.powerOfTen(fraction.isEmpty() ? 0 : 1 - fraction.length());
    double all = 3600 * hours + 60 * Integer.parseInt(match.group(2)) + seconds;
    return Optional.of(new TimeReading(scaling.amount(all), step))
        .filter(t -> inRange(t, cell, line, column, expected() + ", up to 100 h"));
  }

  private boolean inRange(TimeReading time, String cell, int line, int column, String expected) {
    boolean inRange = RANGE.contains(time.seconds());
    if (!inRange) {
      reportOutOfRange(cell, line, column, expected);
    }
    return inRange;
  }

  private void reportOutOfRange(String cell, int line, int column, String expected) {
    log.add(
        ProblemCode.CELL_OUT_OF_RANGE,
        line,
        column,
        Quoted.of(cell),
        expected,
        "count the time from plugging in");
  }

  private String expected() {
    return unit.equals("min:s")
        ? "minutes and seconds, as in 75:30"
        : "hours, minutes and seconds, as in 1:15:30";
  }

  private String remedy(String cell) {
    if (unit.equals("min:s") && H_MIN_S.matcher(cell).matches()) {
      return "write minutes and seconds only (a spreadsheet may have turned 7:05 into 7:05:00), or"
          + " head the column [h:min:s] if its times are in hours";
    }
    if (cell.contains(",") && !numbers.commaAllowed()) {
      return "write a decimal point, or part the cells of the file with semicolons";
    }
    return "write the time in that form, seconds with two digits, or leave the cell empty";
  }
}
