package taperbook.format;

import java.math.BigDecimal;
import java.math.RoundingMode;
import taperbook.quantity.Interval;

/**
 * Rounds a value to what its uncertainty permits: at most two significant digits of the half-width
 * of its interval are kept, and the value is rounded to the same place.
 *
 * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, 7.2.6</a>
 */
final class Rounding {
  private Rounding() {}

  /**
   * Returns the decimal places to print for a value with the given interval.
   *
   * @param bounds interval of the value
   * @param max places to print if the interval has no width; also the maximum
   * @return decimal places, negative for tens and hundreds
   */
  static int places(Interval bounds, int max) {
    double half = bounds.width() / 2;
    if (half <= 0) {
      return max;
    }
    int exponent = (int) Math.floor(Math.log10(half) + 1e-9);
    double leading = half / Math.pow(10, exponent);
    // Two digits if the first is small, one if it is large: 0.12 and 0.5, not 0.1 and 0.50.
    int digits = leading < 2.95 ? 2 : 1;
    return Math.min(max, digits - 1 - exponent);
  }

  static String nearest(double value, int places) {
    return plain(rounded(value, places), places);
  }

  static BigDecimal rounded(double value, int places) {
    return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
  }

  static String down(double value, int places) {
    return plain(guarded(value, places).setScale(places, RoundingMode.FLOOR), places);
  }

  static String up(double value, int places) {
    return plain(guarded(value, places).setScale(places, RoundingMode.CEILING), places);
  }

  /** Removes floating-point noise, so that 0.3 - 0.1 does not round outward to 0.3. */
  private static BigDecimal guarded(double value, int places) {
    return new BigDecimal(value).setScale(places + 6, RoundingMode.HALF_EVEN);
  }

  private static String plain(BigDecimal rounded, int places) {
    BigDecimal whole = places < 0 ? rounded.setScale(0) : rounded;
    String text = whole.toPlainString();
    if (whole.signum() == 0) {
      text = text.replace("-", "");
    }
    return text.replace("-", "\u2212");
  }
}
