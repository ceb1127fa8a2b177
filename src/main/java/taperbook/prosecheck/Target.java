package taperbook.prosecheck;

import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;

/**
 * What a typed figure may be held against: a number of the report or a stated fact.
 *
 * @param id the number's id, or the fact's item
 * @param label what it is in words
 * @param unit its base unit
 * @param estimate value and interval in that unit
 * @param isNumber true for a number, which {@code ${number(...)}} can print
 */
record Target(String id, String label, Unit unit, Estimate estimate, boolean isNumber) {
  /** True if what the writer may have had in mind and the interval have a value in common. */
  boolean agrees(Amount amount) {
    return estimate.bounds().overlaps(amount.room());
  }
}
