package taperbook.input.cell;

import java.math.BigDecimal;

/**
 * Carries out a {@link LinearConversion} on the numbers of one column, from the first row to the
 * last. In decimal arithmetic, so that 0.57 by 100 is 57 and a mapped file gives what a plain one
 * would.
 */
public final class ConvertedColumn {
  private final LinearConversion scale;
  private final boolean none;
  private BigDecimal first = BigDecimal.ZERO;
  private boolean begun;

  public ConvertedColumn(LinearConversion scale) {
    this.scale = scale;
    this.none = scale.isNone();
  }

  /** The amount that a number of the column stands for. */
  public double amount(double number) {
    if (none) {
      return number;
    }
    BigDecimal exact = BigDecimal.valueOf(number);
    if (scale.lessFirst() && !begun) {
      first = exact;
    }
    begun = true;
    return exact.subtract(first).multiply(scale.factor()).add(scale.offset()).doubleValue();
  }

  /** The step between amounts that belongs to a step between numbers. */
  public double step(double step) {
    return none ? step : BigDecimal.valueOf(step).multiply(scale.factor().abs()).doubleValue();
  }
}
