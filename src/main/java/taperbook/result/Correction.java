package taperbook.result;

import java.time.LocalDate;
import java.util.List;

/**
 * A correction of a report after its publication.
 *
 * @param day day of the correction, from the front matter
 * @param since day of the version that it is compared with
 * @param reason the tester's reason
 * @param moved the numbers that changed, in report order; may be empty
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

  public Correction {
    moved = List.copyOf(moved);
  }
}
