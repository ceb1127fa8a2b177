package taperbook.quantity;

/**
 * A value with the bounds that the truth must lie in, if the stated assumptions hold.
 *
 * @param value best value
 * @param bounds interval that contains {@code value}
 */
public record Estimate(double value, Interval bounds) {
  /** Checks that the bounds contain the value; a shortfall by floating-point error is mended. */
  public Estimate {
    double slack = 1e-9 * Math.max(1, Math.abs(value));
    if (!(value >= bounds.low() - slack && value <= bounds.high() + slack)) {
      throw new IllegalArgumentException(value + " lies outside " + bounds);
    }
    bounds = bounds.hull(value);
  }

  /** A value known without error, such as a distance that the tester asks for. */
  public static Estimate exactly(double value) {
    return new Estimate(value, Interval.exactly(value));
  }

  /** A value give or take {@code half}. */
  public static Estimate around(double value, double half) {
    return new Estimate(value, Interval.around(value, half));
  }

  /** Difference; the bounds treat both as independent. */
  public Estimate minus(Estimate other) {
    return new Estimate(value - other.value, bounds.minus(other.bounds));
  }

  /** Product; the bounds treat both as independent. */
  public Estimate times(Estimate other) {
    return new Estimate(value * other.value, bounds.times(other.bounds));
  }

  /** Product with a number. */
  public Estimate times(double factor) {
    return new Estimate(value * factor, bounds.times(factor));
  }

  /**
   * Quotient; the bounds treat both as independent.
   *
   * @throws IllegalArgumentException if the divisor's bounds contain zero
   */
  public Estimate over(Estimate divisor) {
    return new Estimate(value / divisor.value, bounds.over(divisor.bounds));
  }
}
