package taperbook.quantity;

/**
 * A value with bounds that contain the true value if the stated assumptions hold.
 *
 * @param value best estimate
 * @param bounds interval that contains {@code value}
 */
public record Estimate(double value, Interval bounds) {
  /** Checks that the bounds contain the value; a violation by floating-point error is corrected. */
  public Estimate {
    double slack = 1e-9 * Math.max(1, Math.abs(value));
    if (!(value >= bounds.low() - slack && value <= bounds.high() + slack)) {
      throw new IllegalArgumentException(value + " lies outside " + bounds);
    }
    bounds = bounds.hull(value);
  }

  /** Returns a value known without error, such as a distance that the tester requests. */
  public static Estimate exactly(double value) {
    return new Estimate(value, Interval.exactly(value));
  }

  /** Returns a value plus or minus {@code half}. */
  public static Estimate around(double value, double half) {
    return new Estimate(value, Interval.around(value, half));
  }

  /** Returns the difference; the bounds treat both as independent. */
  public Estimate minus(Estimate other) {
    return new Estimate(value - other.value, bounds.minus(other.bounds));
  }

  /** Returns the product; the bounds treat both as independent. */
  public Estimate times(Estimate other) {
    return new Estimate(value * other.value, bounds.times(other.bounds));
  }

  /** Returns the product with a number. */
  public Estimate times(double factor) {
    return new Estimate(value * factor, bounds.times(factor));
  }

  /**
   * Returns the quotient; the bounds treat both as independent.
   *
   * @throws IllegalArgumentException if the divisor's bounds contain zero
   */
  public Estimate over(Estimate divisor) {
    return new Estimate(value / divisor.value, bounds.over(divisor.bounds));
  }
}
