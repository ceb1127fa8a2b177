package taperbook.session;

import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * A row of {@code conditions.csv} or {@code range-test.csv}.
 *
 * @param written the value as entered, trimmed; empty exactly if not known
 * @param unit the unit as entered, trimmed; may be empty
 * @param amount the value in the base unit of its quantity; its bounds are the entered tolerance,
 *     or half a unit of the last digit in both directions; empty for texts and words
 * @param giveOrTake the tolerance as entered, in the unit of the row; empty if there is none
 * @param howKnown how the tester obtained the value
 * @param row the row of the input file
 */
public record Fact(
    String written,
    String unit,
    Optional<Estimate> amount,
    String giveOrTake,
    HowKnown howKnown,
    RowRef row) {
  /** Checks that a fact has a value exactly if it is known. */
  public Fact {
    if (written.isEmpty() != (howKnown == HowKnown.UNKNOWN)) {
      throw new IllegalArgumentException("a fact is written if and only if it is known: " + row);
    }
  }

  /** Creates a fact without a tolerance. */
  public Fact(
      String written, String unit, Optional<Estimate> amount, HowKnown howKnown, RowRef row) {
    this(written, unit, amount, "", howKnown, row);
  }

  /** Returns true if there is a value. */
  public boolean isKnown() {
    return howKnown != HowKnown.UNKNOWN;
  }
}
