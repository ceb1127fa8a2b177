package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.diagnostics.Quoted;

/** Explains why a proposal leaves out each unused column. */
final class LeftOutColumns {
  private final List<ForeignColumn> columns;
  private final List<ProposedRow> rows;

  /**
   * Selects the columns that no row uses.
   *
   * @param columns all columns
   * @param rows the rows of the proposal
   */
  LeftOutColumns(List<ForeignColumn> columns, List<ProposedRow> rows) {
    this.columns = List.copyOf(columns);
    this.rows = List.copyOf(rows);
  }

  /**
   * Returns one sentence for each such column, except those without a header and without content.
   */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    for (ForeignColumn column : columns) {
      boolean empty = column.head().isEmpty() && column.isBlank();
      if (!empty && rows.stream().noneMatch(row -> row.index() == column.index())) {
        sentences.add(name(column) + ": " + why(column));
      }
    }
    return sentences;
  }

  private static String name(ForeignColumn column) {
    String number = "#" + (column.index() + 1);
    return column.head().isEmpty() ? number : Quoted.of(column.head()) + " (" + number + ")";
  }

  private String why(ForeignColumn column) {
    if (column.isBlank()) {
      return "it is empty";
    }
    Optional<ProposedRow> meant =
        ChannelDetector.of(column).stream().max(Comparator.comparingInt(ProposedRow::points));
    if (meant.isPresent()) {
      return "it looks like "
          + meant.get().item()
          + ", for which "
          + taken(meant.get().item())
          + " is taken";
    }
    Optional<ProposedRow> outside = ChannelDetector.implausible(column);
    if (outside.isPresent()) {
      return "it looks like "
          + outside.get().item()
          + ", but its numbers from "
          + plain(column.least())
          + " to "
          + plain(column.greatest())
          + " are none in "
          + outside.get().unit()
          + "; add a row with a factor if they are";
    }
    return column.isNumeric()
        ? ChannelDetector.otherMeaning(column).orElse("no channel is named like it")
        : "its cells are no numbers";
  }

  private String taken(String item) {
    return rows.stream()
        .filter(row -> row.item().equals(item))
        .flatMap(row -> Stream.of(name(columns.get(row.index()))))
        .collect(Collectors.joining());
  }

  private static String plain(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e15
        ? String.valueOf((long) number)
        : String.valueOf(number);
  }
}
