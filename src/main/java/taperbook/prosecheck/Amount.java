package taperbook.prosecheck;

import java.util.Optional;
import taperbook.quantity.Interval;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;

/**
 * An amount with its unit in a passage.
 *
 * @param start index of its first character
 * @param end index after its last character
 * @param unit its unit
 * @param low the amount, or the first of a range
 * @param high the amount, or the second of a range
 * @param step value of one unit of the last digit
 * @param hedge words that qualify it
 */
record Amount(int start, int end, Unit unit, double low, double high, double step, Hedge hedge) {
  private static final double LEAST = 1e-3;

  boolean isRange() {
    return low != high;
  }

  boolean is(Quantity quantity) {
    return unit.quantity() == quantity;
  }

  /**
   * Returns the amount as written, or the midpoint of a range, in the base unit of its quantity.
   */
  double base() {
    return unit.toBase((low + high) / 2);
  }

  /** Returns the interval that the writer may have meant, in the base unit of the quantity. */
  Interval interval() {
    boolean rounds = !is(Quantity.SHARE) && !is(Quantity.TEMPERATURE);
    Interval interval =
        hedge.interval(Math.min(low, high), Math.max(low, high), step, rounds && step >= 1);
    // A reciprocal unit such as mi/kWh swaps the ends, and the interval must not contain zero.
    return is(Quantity.CONSUMPTION)
        ? interval.atLeast(LEAST).mapMonotone(unit::toBase)
        : interval.mapMonotone(unit::toBase);
  }

  /** Returns one end of a range as a separate amount. */
  Amount endOfRange(boolean first) {
    double value = first ? low : high;
    return new Amount(start, end, unit, value, value, step, hedge);
  }

  /** Returns the amount if it is a whole number of per cent. */
  Optional<Integer> wholePercent() {
    return is(Quantity.SHARE) && !isRange() && low == Math.rint(low)
        ? Optional.of((int) low)
        : Optional.empty();
  }

  boolean overlaps(int from, int to) {
    return start < to && from < end;
  }
}
