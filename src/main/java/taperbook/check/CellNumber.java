package taperbook.check;

import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Unit;

/**
 * A number as it was written.
 *
 * @param value its value, finite
 * @param lastPlace power of ten of its last digit: 0 for {@code 57}, -1 for {@code 57.6}
 */
record CellNumber(double value, int lastPlace) {
  /** One unit of the last digit written. */
  double step() {
    return powerOfTen(lastPlace);
  }

  /** The value in base units, give or take half a unit of the last digit. */
  Estimate toBase(Unit unit) {
    double half = step() / 2;
    Interval ends = Interval.between(unit.toBase(value - half), unit.toBase(value + half));
    return new Estimate(unit.toBase(value), ends);
  }

  /** Half a step of a place in base units: for a display in that unit with so many decimals. */
  static double halfStepInBase(double step, Unit unit) {
    return unit.toBase(step / 2) - unit.toBase(0);
  }

  /** Exact where a power of ten can be: {@code Math.pow(10, -1)} is, as parsing is. */
  static double powerOfTen(int exponent) {
    return Double.parseDouble("1e" + exponent);
  }
}
