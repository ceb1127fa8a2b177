package taperbook.session;

import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * One stated fact: a row of {@code conditions.csv} or {@code range-test.csv}.
 *
 * @param written the value as written, trimmed; empty exactly if not known
 * @param unit the unit as written, trimmed; may be empty
 * @param amount the value in the base unit of its quantity; its bounds are what is written to give
 *     or take, or half a unit of the last digit both ways; empty for texts and words
 * @param giveOrTake what is written to give or take, in the unit as written; empty if nothing is
 * @param howKnown how the tester came by it
 * @param row where it stands
 */
public record Fact(
    String written,
    String unit,
    Optional<Estimate> amount,
    String giveOrTake,
    HowKnown howKnown,
    RowRef row) {
  /** Checks that a fact is either known and written, or neither. */
  public Fact {
    if (written.isEmpty() != (howKnown == HowKnown.UNKNOWN)) {
      throw new IllegalArgumentException("a fact is written if and only if it is known: " + row);
    }
  }

  /** A fact beside which nothing is written to give or take. */
  public Fact(
      String written, String unit, Optional<Estimate> amount, HowKnown howKnown, RowRef row) {
    this(written, unit, amount, "", howKnown, row);
  }

  /** True if there is a value. */
  public boolean isKnown() {
    return howKnown != HowKnown.UNKNOWN;
  }
}
