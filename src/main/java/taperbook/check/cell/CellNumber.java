package taperbook.check.cell;

import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Unit;

/**
 * A number as it was written.
 *
 * @param value its value, finite
 * @param lastPlace power of ten of its last digit: 0 for {@code 57}, -1 for {@code 57.6}
 */
public record CellNumber(double value, int lastPlace) {
  private static final int MOST_KEPT = 22;
  private static final double[] POWERS = powers();

  /** One unit of the last digit written. */
  public double step() {
    return powerOfTen(lastPlace);
  }

  /** The value in base units, give or take half a unit of the last digit. */
  public Estimate toBase(Unit unit) {
    return toBase(unit, step() / 2);
  }

  /**
   * The value in base units.
   *
   * @param half what to give or take, in the unit; less than the value where the unit is a
   *     reciprocal one
   */
  public Estimate toBase(Unit unit, double half) {
    Interval ends = Interval.between(unit.toBase(value - half), unit.toBase(value + half));
    return new Estimate(unit.toBase(value), ends);
  }

  /** Half a step of a place in base units: for a display in that unit with so many decimals. */
  public static double halfStepInBase(double step, Unit unit) {
    return unit.toBase(step / 2) - unit.toBase(0);
  }

  /** Exact where a power of ten can be: {@code Math.pow(10, -1)} is, as parsing is. */
  public static double powerOfTen(int exponent) {
    return Math.abs(exponent) <= MOST_KEPT
        ? POWERS[exponent + MOST_KEPT]
        : Double.parseDouble("1e" + exponent);
  }

  private static double[] powers() {
    double[] powers = new double[2 * MOST_KEPT + 1];
    for (int i = 0; i < powers.length; i++) {
      powers[i] = Double.parseDouble("1e" + (i - MOST_KEPT));
    }
    return powers;
  }
}
