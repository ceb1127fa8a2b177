package taperbook.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Formats numbers for data files: significant digits, no exponent, no trailing zeros. */
public final class PlainDigits {
  private PlainDigits() {}

  /** Returns a value with a number of significant digits. */
  public static String of(double value, int significant) {
    BigDecimal rounded =
        new BigDecimal(value).round(new MathContext(significant, RoundingMode.HALF_EVEN));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
