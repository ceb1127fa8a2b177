package taperbook.input.cell;

import java.math.BigDecimal;

/**
 * Conversion of the numbers of an external column to amounts of a unit: {@code number * factor +
 * offset}.
 *
 * @param factor multiplier, not zero
 * @param offset added after multiplication, in the unit
 * @param lessFirst true to subtract the first number of the column from each number before the
 *     conversion
 */
public record LinearConversion(BigDecimal factor, BigDecimal offset, boolean lessFirst) {
  /** The identity conversion. */
  public static final LinearConversion NONE =
      new LinearConversion(BigDecimal.ONE, BigDecimal.ZERO, false);

  public LinearConversion {
    if (factor.signum() == 0) {
      throw new IllegalArgumentException("a factor of zero");
    }
  }

  public boolean isNone() {
    return !lessFirst && factor.compareTo(BigDecimal.ONE) == 0 && offset.signum() == 0;
  }
}
