package taperbook.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as data prints them: significant digits, no exponent, no trailing zeros. */
public final class PlainDigits {
  private PlainDigits() {}

  /** A value with so many significant digits. */
  public static String of(double value, int significant) {
    BigDecimal rounded =
        new BigDecimal(value).round(new MathContext(significant, RoundingMode.HALF_EVEN));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
