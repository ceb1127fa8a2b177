package taperbook.input.cell;

import java.math.BigDecimal;
import java.math.RoundingMode;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/**
 * Plausible amounts of a quantity, in its base unit.
 *
 * @param low minimum
 * @param high maximum
 * @param lowExcluded true if the minimum itself is excluded
 */
public record QuantityRange(double low, double high, boolean lowExcluded) {
  public static QuantityRange from(double low, double high) {
    return new QuantityRange(low, high, false);
  }

  public static QuantityRange above(double low, double high) {
    return new QuantityRange(low, high, true);
  }

  /** Returns true if the range contains the amount; false for NaN. */
  public boolean contains(double amount) {
    return (lowExcluded ? amount > low : amount >= low) && amount <= high;
  }

  /** Returns true if the range contains only positive amounts. */
  public boolean isPositive() {
    return low > 0 || (low == 0 && lowExcluded);
  }

  /** Returns the part of an estimate's bounds inside the range, which must contain its value. */
  public Estimate clip(Estimate estimate) {
    Interval bounds = estimate.bounds();
    return new Estimate(
        estimate.value(), new Interval(Math.max(low, bounds.low()), Math.min(high, bounds.high())));
  }

  /** Returns the range in a unit, such as {@code from -76 to 248 degF}. */
  public String words(Unit unit) {
    double a = unit.fromBase(low);
    double b = unit.fromBase(high);
    String from = plain(Math.min(a, b), RoundingMode.CEILING);
    String symbol = unit == Unit.ONE ? "" : " " + unit.symbol();
    String to = plain(Math.max(a, b), RoundingMode.FLOOR) + symbol;
    return lowExcluded ? "above " + from + " and up to " + to : "from " + from + " to " + to;
  }

  /**
   * Formats an amount with one decimal place, or three if it is small, rounded into the range;
   * floating-point noise is removed first.
   */
  private static String plain(double amount, RoundingMode inward) {
    int places = Math.abs(amount) < 0.1 ? 3 : 1;
    BigDecimal rounded =
        BigDecimal.valueOf(amount).setScale(6, RoundingMode.HALF_EVEN).setScale(places, inward);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
