package taperbook.prosecheck;

import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;

/**
 * A value that a typed figure may be compared with: a number of the report or a stated fact.
 *
 * @param id the number's id, or the fact's item
 * @param label its description
 * @param unit its base unit
 * @param estimate value and interval in that unit
 * @param isNumber true for a number, which {@code ${number(...)}} can print
 */
record Target(String id, String label, Unit unit, Estimate estimate, boolean isNumber) {
  /**
   * Returns true if the interval that the writer may have meant overlaps the interval of this
   * value.
   */
  boolean agrees(Amount amount) {
    return estimate.bounds().overlaps(amount.interval());
  }
}
