package taperbook.input.cell;

import java.math.BigDecimal;
import java.math.RoundingMode;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/**
 * The amounts that a quantity can sensibly have, in its base unit.
 *
 * @param low least amount
 * @param high greatest amount
 * @param lowExcluded true if the least amount itself is too little
 */
public record QuantityRange(double low, double high, boolean lowExcluded) {
  public static QuantityRange from(double low, double high) {
    return new QuantityRange(low, high, false);
  }

  public static QuantityRange above(double low, double high) {
    return new QuantityRange(low, high, true);
  }

  /** True if the range holds the amount; NaN it never holds. */
  public boolean contains(double amount) {
    return (lowExcluded ? amount > low : amount >= low) && amount <= high;
  }

  /** True if only amounts above zero are in the range. */
  public boolean isPositive() {
    return low > 0 || (low == 0 && lowExcluded);
  }

  /** The part of an estimate's bounds that lies in the range; its value must. */
  public Estimate clip(Estimate estimate) {
    Interval bounds = estimate.bounds();
    return new Estimate(
        estimate.value(), new Interval(Math.max(low, bounds.low()), Math.min(high, bounds.high())));
  }

  /** The range in a unit, such as {@code from -76 to 248 degF}. */
  public String words(Unit unit) {
    double a = unit.fromBase(low);
    double b = unit.fromBase(high);
    String from = plain(Math.min(a, b), RoundingMode.CEILING);
    String symbol = unit == Unit.ONE ? "" : " " + unit.symbol();
    String to = plain(Math.max(a, b), RoundingMode.FLOOR) + symbol;
    return lowExcluded ? "above " + from + " and up to " + to : "from " + from + " to " + to;
  }

  /**
   * One decimal place, or three of what is small, rounded into the range; first the noise of
   * floating point is taken off.
   */
  private static String plain(double amount, RoundingMode inward) {
    int places = Math.abs(amount) < 0.1 ? 3 : 1;
    BigDecimal rounded =
        BigDecimal.valueOf(amount).setScale(6, RoundingMode.HALF_EVEN).setScale(places, inward);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
