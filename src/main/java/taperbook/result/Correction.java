package taperbook.result;

import java.time.LocalDate;
import java.util.List;

/**
 * What was put right in a report after it had been published.
 *
 * @param day when, as the front matter states it
 * @param since day of the version that it is held against
 * @param reason why, in the tester's words
 * @param moved the numbers that moved, in the report's order; may be empty
 */
public record Correction(LocalDate day, LocalDate since, String reason, List<MovedNumber> moved) {
  /** Columns of {@code corrections.csv}, in order. */
  public static final List<String> COLUMNS =
      List.of(
          "corrected",
          "since",
          "reason",
          "id",
          "session",
          "against",
          "label",
          "unit",
          "before",
          "before low",
          "before high",
          "after",
          "after low",
          "after high",
          "beyond the old interval",
          "causes");

  /** Copies the list. */
  public Correction {
    moved = List.copyOf(moved);
  }
}
