package taperbook.write.data;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers for data files: ten significant digits, no exponent, no trailing zeros. */
final class Digits {
  // Beyond ten digits lies only the noise of floating point.
  private static final MathContext TEN = new MathContext(10, RoundingMode.HALF_EVEN);

  private Digits() {}

  static String plain(double value) {
    BigDecimal rounded = new BigDecimal(value).round(TEN).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
