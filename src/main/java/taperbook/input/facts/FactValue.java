package taperbook.input.facts;

import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * The value of a fact, understood.
 *
 * @param written the value as written; a word in its usual spelling
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
