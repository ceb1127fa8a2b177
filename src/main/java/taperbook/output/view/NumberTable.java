package taperbook.output.view;

import java.util.List;
import java.util.Optional;
import taperbook.result.ReportNumber;

/**
 * A table of numbers for a template and for an article.
 *
 * @param first heading of its first column
 * @param unit the unit of all columns, or empty
 */
public record NumberTable<R>(String first, List<Head> heads, String unit, List<R> rows) {
  /** Returns the same table with other rows. */
  <S> NumberTable<S> with(List<S> others) {
    return new NumberTable<>(first, heads, unit, others);
  }

  /**
   * The contents of a row.
   *
   * @param label its heading
   * @param numbers its numbers; empty if a column has none
   */
  record Row(String label, List<Optional<ReportNumber>> numbers) {
    Row {
      numbers = List.copyOf(numbers);
    }

    boolean hasEstimate() {
      return numbers.stream().anyMatch(n -> n.flatMap(ReportNumber::estimate).isPresent());
    }
  }

  /**
   * The heading of a column or a row with its unit, which may be empty.
   *
   * @param other its unit in the other unit of distance, if that differs
   */
  public record Head(String label, String unit, Optional<OtherUnit> other) {
    static Head of(String label) {
      return new Head(label, "", Optional.empty());
    }
  }

  /** The unit of a column in the other unit of distance. */
  public record OtherUnit(String unit) {}

  /** A row of a table. */
  public record RowView(@Unwrapped Head head, List<Cell> cells) {}

  /** A number with its texts in a table. */
  public record Cell(@Unwrapped NumberView number, @Unwrapped Shown shown, Optional<Shown> other) {}

  /** A value, its interval, and the ends of the interval, without the unit. */
  public record Shown(String shown, String ends, String low, String high) {}
}
