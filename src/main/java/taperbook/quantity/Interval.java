package taperbook.quantity;

import java.util.function.DoubleUnaryOperator;

/**
 * A closed interval of real numbers with interval arithmetic: every result contains each value that
 * the operands' values could give.
 *
 * @param low lower end, finite
 * @param high upper end, finite, not below {@code low}
 */
public record Interval(double low, double high) {
  /** Checks that both ends are finite and in order; NaN is refused. */
  public Interval {
    if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
      throw new IllegalArgumentException("not an interval: " + low + " to " + high);
    }
  }

  /** Returns the interval that contains only {@code x}. */
  public static Interval exactly(double x) {
    return new Interval(x, x);
  }

  /** Returns {@code centre} plus or minus {@code half}, which must not be negative. */
  public static Interval around(double centre, double half) {
    return new Interval(centre - half, centre + half);
  }

  /** Returns the smallest interval that contains both values, in either order. */
  public static Interval between(double a, double b) {
    return new Interval(Math.min(a, b), Math.max(a, b));
  }

  /** Returns the sum. */
  public Interval plus(Interval other) {
    return new Interval(low + other.low, high + other.high);
  }

  /** Returns the difference of values that may vary independently. */
  public Interval minus(Interval other) {
    return new Interval(low - other.high, high - other.low);
  }

  /** Returns the product with a number. */
  public Interval times(double factor) {
    return between(low * factor, high * factor);
  }

  /** Returns the product. */
  public Interval times(Interval other) {
    double a = low * other.low;
    double b = low * other.high;
    double c = high * other.low;
    double d = high * other.high;
    return new Interval(
        Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
  }

  /**
   * Returns the quotient.
   *
   * @throws IllegalArgumentException if {@code divisor} contains zero
   */
  public Interval over(Interval divisor) {
    if (divisor.contains(0)) {
      throw new IllegalArgumentException("division by " + divisor);
    }
    return times(new Interval(1 / divisor.high, 1 / divisor.low));
  }

  /** Returns the image under a monotone function, increasing or decreasing. */
  public Interval mapMonotone(DoubleUnaryOperator function) {
    return between(function.applyAsDouble(low), function.applyAsDouble(high));
  }

  /** Returns the smallest interval that contains both. */
  public Interval hull(Interval other) {
    return new Interval(Math.min(low, other.low), Math.max(high, other.high));
  }

  /** Returns the smallest interval that contains this one and {@code x}. */
  public Interval hull(double x) {
    return new Interval(Math.min(low, x), Math.max(high, x));
  }

  /** Returns this interval with all values below {@code floor} raised to it. */
  public Interval atLeast(double floor) {
    return new Interval(Math.max(low, floor), Math.max(high, floor));
  }

  /** Returns true if {@code x} lies inside or on an end. */
  public boolean contains(double x) {
    return low <= x && x <= high;
  }

  /** Returns true if the two have a value in common. */
  public boolean overlaps(Interval other) {
    return low <= other.high && other.low <= high;
  }

  /** Returns the upper end minus the lower end, never negative. */
  public double width() {
    return high - low;
  }

  /** Returns the midpoint. */
  public double middle() {
    return low + (high - low) / 2;
  }
}
