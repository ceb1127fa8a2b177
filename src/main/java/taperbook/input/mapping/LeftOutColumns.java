package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;

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
      return Texts.of("input.left_out_columns.it_is_empty");
    }
    Optional<ProposedRow> meant =
        ChannelDetector.of(column).stream().max(Comparator.comparingInt(ProposedRow::points));
    if (meant.isPresent()) {
      return Texts.of(
          "input.left_out_columns.it_looks_like_for_which",
          meant.get().item(),
          taken(meant.get().item()));
    }
    Optional<ProposedRow> outside = ChannelDetector.implausible(column);
    if (outside.isPresent()) {
      return Texts.of(
          "input.left_out_columns.it_looks_like_but_its",
          outside.get().item(),
          plain(column.least()),
          plain(column.greatest()),
          outside.get().unit());
    }
    return column.isNumeric()
        ? ChannelDetector.otherMeaning(column)
            .orElse(Texts.of("input.left_out_columns.no_channel_is_named_like"))
        : Texts.of("input.left_out_columns.its_cells_are_no_numbers");
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
