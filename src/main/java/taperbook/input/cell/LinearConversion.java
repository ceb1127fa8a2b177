package taperbook.input.cell;

import java.math.BigDecimal;

/**
 * How the numbers of a foreign column become amounts of a unit: {@code number * factor + offset}.
 *
 * @param factor what each number is multiplied by, not zero
 * @param offset what is then added, in the unit
 * @param lessFirst true if the first number of the column is taken off each before all else
 */
public record LinearConversion(BigDecimal factor, BigDecimal offset, boolean lessFirst) {
  /** Numbers are amounts already. */
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
