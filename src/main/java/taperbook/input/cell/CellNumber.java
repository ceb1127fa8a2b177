package taperbook.input.cell;

import java.math.BigDecimal;
import java.math.MathContext;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/**
 * A number with the precision of its written form.
 *
 * @param value its value, finite
 * @param lastPlace power of ten of its last digit: 0 for {@code 57}, -1 for {@code 57.6}
 */
public record CellNumber(double value, int lastPlace) {
  private static final int MAX_EXPONENT = 22;

  /**
   * Further digits are errors of binary arithmetic, as in 0.30000000000000004: a double has 15 to
   * 17 significant digits, and sums lose some.
   */
  private static final MathContext TRUE_DIGITS = new MathContext(12);

  private static final double[] POWERS = powers();

  /**
   * Parses plain digits with a point as the decimal mark. The last place is that of the last digit
   * written, but no finer than that of the value rounded to 12 digits.
   */
  public static CellNumber parse(String text) {
    BigDecimal written = new BigDecimal(text);
    int place = -written.scale();
    if (place < 0 && written.precision() > TRUE_DIGITS.getPrecision()) {
      int rounded = -written.round(TRUE_DIGITS).stripTrailingZeros().scale();
      place = Math.max(place, Math.min(0, rounded));
    }
    return new CellNumber(Double.parseDouble(text), place);
  }

  /** Returns the value of one unit of the last digit. */
  public double step() {
    return powerOfTen(lastPlace);
  }

  /** Returns the value in base units, plus or minus half a unit of the last digit. */
  public Estimate toBase(Unit unit) {
    return toBase(unit, step() / 2);
  }

  /**
   * Returns the value in base units.
   *
   * @param half the tolerance, in the unit; less than the value if the unit is a reciprocal one
   */
  public Estimate toBase(Unit unit, double half) {
    Interval ends = Interval.between(unit.toBase(value - half), unit.toBase(value + half));
    return new Estimate(unit.toBase(value), ends);
  }

  /** Returns half a step of a decimal place in base units, for a display in that unit. */
  public static double halfStepInBase(double step, Unit unit) {
    return unit.toBase(step / 2) - unit.toBase(0);
  }

  /**
   * Exact for exactly representable powers; otherwise equal to the parsed literal, like {@code
   * Math.pow(10, -1)}.
   */
  public static double powerOfTen(int exponent) {
    return Math.abs(exponent) <= MAX_EXPONENT
        ? POWERS[exponent + MAX_EXPONENT]
        : Double.parseDouble("1e" + exponent);
  }

  private static double[] powers() {
    double[] powers = new double[2 * MAX_EXPONENT + 1];
    for (int i = 0; i < powers.length; i++) {
      powers[i] = Double.parseDouble("1e" + (i - MAX_EXPONENT));
    }
    return powers;
  }
}
