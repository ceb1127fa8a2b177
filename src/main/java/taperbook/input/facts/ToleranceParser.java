package taperbook.input.facts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.CellNumber;
import taperbook.input.cell.NumberParser;
import taperbook.input.cell.QuantityRange;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;

/** Parses the tolerance of a fact; the default is half a unit of its last digit. */
final class ToleranceParser {
  /**
   * Maximum uncertainty of a distance correction, as a share; a less certain one is useless because
   * odometer errors are at most a few per cent. Common practice, no source.
   */
  private static final double COARSEST_CORRECTION = 0.02;

  private static final String EMPTY_IT = Texts.of("input.tolerance_parser.empty_cell");

  private final NumberParser numbers;
  private final ProblemLog log;

  ToleranceParser(boolean commaAllowed, ProblemLog log) {
    this.numbers =
        NumberParser.forFacts(commaAllowed, log, Texts.of("input.common.leave_cell_empty"));
    this.log = log;
  }

  /** Refuses a tolerance for a value that is not an amount. */
  void refuse(FactRow row) {
    if (!row.giveOrTake().isEmpty()) {
      row.problemOfGiveOrTake(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Texts.of("input.tolerance_parser.empty_cell_as_value_is"),
          EMPTY_IT);
    }
  }

  /**
   * Returns a value in the base unit with the stated tolerance, clipped to the range; or with half
   * a unit of the last digit if none is stated, or after a problem.
   *
   * @param value the value, in the range
   * @param range the possible values, in the base unit
   */
  Estimate around(FactRow row, CellNumber value, QuantityRange range, Unit unit) {
    return row.giveOrTake().isEmpty()
        ? value.toBase(unit)
        : written(row, value, range, unit)
            .map(half -> range.clip(value.toBase(unit, half)))
            .orElse(value.toBase(unit));
  }

  private Optional<Double> written(FactRow row, CellNumber value, QuantityRange range, Unit unit) {
    double span = Math.abs(unit.fromBase(range.high()) - unit.fromBase(range.low()));
    boolean belowValue = range.isPositive() && value.value() <= span;
    String expected = Texts.of("input.tolerance_parser.give_or_take", max(belowValue, span, unit));
    Optional<CellNumber> half =
        numbers.read(
            row.giveOrTake(), row.line(), row.numbers().giveOrTake(), row.forItem(expected));
    return half.map(CellNumber::value)
        .filter(
            written -> {
              boolean allowed = belowValue ? written < value.value() : written <= span;
              if (!(written >= 0 && allowed)) {
                row.problemOfGiveOrTake(
                    log,
                    ProblemCode.VALUE_OUT_OF_RANGE,
                    expected,
                    Texts.of("input.tolerance_parser.write_what_value_may_be"));
              }
              return written >= 0 && allowed;
            });
  }

  private static String max(boolean belowValue, double span, Unit unit) {
    return belowValue
        ? Texts.of("input.tolerance_parser.from_0_to_less_than")
        : QuantityRange.from(0, span).words(Unit.ONE)
            + (unit == Unit.ONE || unit == Unit.CURRENCY ? "" : " " + unit.symbol());
  }

  /** Returns true if the digits of a correction are precise enough; reports a problem otherwise. */
  boolean isFineEnough(FactRow row, Estimate factor) {
    double half = factor.bounds().width() / 2;
    if (half <= COARSEST_CORRECTION * factor.value()) {
      return true;
    }
    row.problemOfValue(
        log,
        ProblemCode.DIGITS_TOO_FEW,
        Texts.of(
            "input.tolerance_parser.which_by_its_last_digit",
            Quoted.of(row.value()),
            plain(factor.bounds().low()),
            plain(factor.bounds().high())),
        Texts.of("input.tolerance_parser.factor_known_to_2_or"),
        Texts.of(
            "input.tolerance_parser.write_more_digits_as_in", Quoted.of(FactsParser.GIVE_OR_TAKE)));
    return false;
  }

  private static String plain(double factor) {
    return new BigDecimal(factor).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
