package taperbook.input.facts;

import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * The parsed value of a fact.
 *
 * @param written the value as entered; a word in its standard spelling
 * @param amount the value in the base unit, for amounts
 */
record FactValue(String written, Optional<Estimate> amount) {
  static FactValue text(String written) {
    return new FactValue(written, Optional.empty());
  }

  static FactValue amount(String written, Estimate amount) {
    return new FactValue(written, Optional.of(amount));
  }
}
