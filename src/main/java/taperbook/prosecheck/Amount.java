package taperbook.prosecheck;

import java.util.Optional;
import taperbook.quantity.Interval;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;

/**
 * An amount with its unit as it stands in a passage.
 *
 * @param start index of its first character
 * @param end index behind its last character
 * @param unit its unit
 * @param low the amount, or the first of a range
 * @param high the amount, or the second of a range
 * @param step worth of one unit of the last digit written
 * @param hedge what softens it
 */
record Amount(int start, int end, Unit unit, double low, double high, double step, Hedge hedge) {
  private static final double LEAST = 1e-3;

  boolean isRange() {
    return low != high;
  }

  boolean is(Quantity quantity) {
    return unit.quantity() == quantity;
  }

  /** The written amount, or the middle of a range, in the base unit of its quantity. */
  double base() {
    return unit.toBase((low + high) / 2);
  }

  /** What the writer may have had in mind, in the base unit of the quantity. */
  Interval room() {
    boolean rounds = !is(Quantity.SHARE) && !is(Quantity.TEMPERATURE);
    Interval room = hedge.room(Math.min(low, high), Math.max(low, high), step, rounds && step >= 1);
    // A reciprocal unit such as mi/kWh turns the ends round and must stay clear of zero.
    return is(Quantity.CONSUMPTION)
        ? room.atLeast(LEAST).mapMonotone(unit::toBase)
        : room.mapMonotone(unit::toBase);
  }

  /** One end of a range as an amount of its own. */
  Amount endOfRange(boolean first) {
    double value = first ? low : high;
    return new Amount(start, end, unit, value, value, step, hedge);
  }

  /** The whole number of per cent, if the amount is one. */
  Optional<Integer> wholePercent() {
    return is(Quantity.SHARE) && !isRange() && low == Math.rint(low)
        ? Optional.of((int) low)
        : Optional.empty();
  }

  boolean overlaps(int from, int to) {
    return start < to && from < end;
  }
}
