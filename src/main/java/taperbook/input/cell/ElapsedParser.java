package taperbook.input.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
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
    this.expectedNumber =
        plain.map(u -> Texts.of("input.elapsed_parser.time", RANGE.words(u))).orElse("");
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

  private Optional<TimeReading> readNumber(Unit in, String cell, int line, int column) {
    return numbers
        .read(cell, line, column, expectedNumber)
        .map(
            n ->
                new TimeReading(
                    in.toBase(scaling.amount(n.value())), in.toBase(scaling.step(n.step()))))
        .filter(t -> inRange(t, cell, line, column, expectedNumber));
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
        .filter(
            t ->
                inRange(
                    t,
                    cell,
                    line,
                    column,
                    Texts.of("input.elapsed_parser.up_to_100_h", expected())));
  }

  private boolean inRange(TimeReading time, String cell, int line, int column, String expected) {
    if (RANGE.contains(time.seconds())) {
      return true;
    }
    log.add(
        ProblemCode.CELL_OUT_OF_RANGE,
        line,
        column,
        Quoted.of(cell),
        expected,
        Texts.of("input.elapsed_parser.count_time_from_plugging_in"));
    return false;
  }

  private String expected() {
    return unit.equals("min:s")
        ? Texts.of("input.elapsed_parser.minutes_and_seconds_as_in")
        : Texts.of("input.elapsed_parser.hours_minutes_and_seconds_as");
  }

  private String remedy(String cell) {
    if (unit.equals("min:s") && H_MIN_S.matcher(cell).matches()) {
      return Texts.of("input.elapsed_parser.write_minutes_and_seconds_only");
    }
    if (cell.contains(",") && !numbers.commaAllowed()) {
      return Texts.of("input.common.write_decimal_point_or_part");
    }
    return Texts.of("input.elapsed_parser.write_time_in_that_form");
  }
}
