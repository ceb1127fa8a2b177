package taperbook.input.cell;

import java.math.BigDecimal;

/**
 * Applies a {@link LinearConversion} to the numbers of one column, from the first row to the last.
 * Uses decimal arithmetic, so that 0.57 times 100 is 57 and a mapped file gives the same result as
 * a plain one.
 */
public final class ConvertedColumn {
  private final LinearConversion scale;
  private final boolean none;
  private BigDecimal first = BigDecimal.ZERO;
  private boolean started;

  public ConvertedColumn(LinearConversion scale) {
    this.scale = scale;
    this.none = scale.isNone();
  }

  /** Converts a number of the column to an amount. */
  public double amount(double number) {
    if (none) {
      return number;
    }
    BigDecimal exact = BigDecimal.valueOf(number);
    if (scale.lessFirst() && !started) {
      first = exact;
    }
    started = true;
    return exact.subtract(first).multiply(scale.factor()).add(scale.offset()).doubleValue();
  }

  /** Converts a step between numbers to a step between amounts. */
  public double step(double step) {
    return none ? step : BigDecimal.valueOf(step).multiply(scale.factor().abs()).doubleValue();
  }
}
