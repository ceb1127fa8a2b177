package taperbook.input.facts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
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

  private static final String EMPTY_IT = "empty the cell";

  private final NumberParser numbers;
  private final ProblemLog log;

  ToleranceParser(boolean commaAllowed, ProblemLog log) {
    this.numbers = NumberParser.forGiveOrTake(commaAllowed, log);
    this.log = log;
  }

  /** Refuses a tolerance for a value that is not an amount. */
  void refuse(FactRow row) {
    if (!row.giveOrTake().isEmpty()) {
      row.problemOfGiveOrTake(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          "an empty cell, as the value is no amount,",
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
    String expected = "a give or take " + max(belowValue, span, unit);
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
                    "write what the value may be off by, in the unit of the value");
              }
              return written >= 0 && allowed;
            });
  }

  private static String max(boolean belowValue, double span, Unit unit) {
    return belowValue
        ? "from 0 to less than the value"
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
        Quoted.of(row.value())
            + ", which by its last digit is a factor from "
            + plain(factor.bounds().low())
            + " to "
            + plain(factor.bounds().high()),
        "a factor known to 2 % or better",
        "write more digits, as in 1.00, or what it may be off by in a column "
            + Quoted.of(FactsParser.GIVE_OR_TAKE));
    return false;
  }

  private static String plain(double factor) {
    return new BigDecimal(factor).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
