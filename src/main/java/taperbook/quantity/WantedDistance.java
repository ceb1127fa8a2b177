package taperbook.quantity;

/**
 * A distance for which the tester requests the charging time.
 *
 * @param amount whole number of the unit, 1 to 9999
 * @param unit {@link Unit#MILE} or {@link Unit#KILOMETRE}
 */
public record WantedDistance(int amount, Unit unit) {
  /** Checks amount and unit. */
  public WantedDistance {
    if (!(1 <= amount && amount <= 9999) || unit.quantity() != Quantity.DISTANCE) {
      throw new IllegalArgumentException("no such distance: " + amount + " " + unit);
    }
  }

  /** Returns the distance in kilometres. */
  public double kilometres() {
    return unit.toBase(amount);
  }

  /** Returns the distance's part of a number's id, such as {@code 100_mi}. */
  public String idPart() {
    return amount + "_" + unit.symbol();
  }

  /** Returns the distance as text, such as {@code 100 mi}. */
  public String words() {
    return amount + " " + unit.symbol();
  }
}
