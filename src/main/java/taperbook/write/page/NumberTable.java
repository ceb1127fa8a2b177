package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.model.Estimate;
import taperbook.model.ReportNumber;
import taperbook.words.ColumnText;
import taperbook.words.Wording;

/**
 * Tables of numbers for a template and for an article: {@code first} and {@code heads} of the
 * columns ({@code label} and {@code unit}), {@code unit} where all columns share one, and {@code
 * rows} of {@code label}, {@code unit} and {@code cells}. A cell is a number with its texts for the
 * table, {@code shown}, {@code ends}, {@code low} and {@code high}, besides.
 */
final class NumberTable {
  private final NumberViews views;
  private final Wording wording;

  NumberTable(NumberViews views, Wording wording) {
    this.views = views;
    this.wording = wording;
  }

  /**
   * A row of a table.
   *
   * @param label its head
   * @param numbers its numbers; empty where a column has none
   */
  record Row(String label, List<Optional<ReportNumber>> numbers) {
    /** Copies the list. */
    Row {
      numbers = List.copyOf(numbers);
    }
  }

  /** A table whose columns have a unit and a precision each. */
  Map<String, Object> byColumn(String first, List<String> heads, List<Row> rows) {
    List<Optional<ColumnText>> texts =
        IntStream.range(0, heads.size())
            .mapToObj(i -> text(rows.stream().map(r -> r.numbers().get(i)).toList()))
            .toList();
    List<String> units = texts.stream().map(t -> t.map(ColumnText::unit).orElse("")).toList();
    boolean one = heads.size() > 1 && units.stream().distinct().count() == 1;
    return table(
        first,
        IntStream.range(0, heads.size())
            .mapToObj(i -> head(heads.get(i), one ? "" : units.get(i)))
            .toList(),
        one ? units.get(0) : "",
        rows.stream().map(r -> row(r.label(), cells(r.numbers(), texts))).toList());
  }

  /** A table whose rows have a unit and a precision each; the unit is at the label. */
  Map<String, Object> byRow(String first, List<String> heads, List<Row> rows) {
    return table(
        first,
        heads.stream().map(h -> head(h, "")).toList(),
        "",
        rows.stream().map(this::row).toList());
  }

  /** A row whose cells share a unit and a precision. */
  Map<String, Object> row(Row row) {
    Optional<ColumnText> text = text(row.numbers());
    String unit = text.map(ColumnText::unit).orElse("");
    Map<String, Object> made =
        row(row.label(), cells(row.numbers(), row.numbers().stream().map(n -> text).toList()));
    made.put("unit", unit);
    return made;
  }

  /** A row of a table, to which a page adds columns that are no numbers. */
  @SuppressWarnings("unchecked")
  static Map<String, Object> rowOf(Map<String, Object> table, int index) {
    return ((List<Map<String, Object>>) Objects.requireNonNull(table.get("rows"))).get(index);
  }

  private Optional<ColumnText> text(List<Optional<ReportNumber>> numbers) {
    List<ReportNumber> present = numbers.stream().flatMap(Optional::stream).toList();
    return present.isEmpty() ? Optional.empty() : Optional.of(new ColumnText(present, wording));
  }

  private List<Map<String, Object>> cells(
      List<Optional<ReportNumber>> numbers, List<Optional<ColumnText>> texts) {
    List<Map<String, Object>> cells = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      Optional<ColumnText> text = texts.get(i);
      cells.add(
          numbers
              .get(i)
              .map(n -> cell(n, text.orElseThrow()))
              .orElseGet(() -> NumberViews.absent("")));
    }
    return cells;
  }

  private Map<String, Object> cell(ReportNumber number, ColumnText text) {
    Map<String, Object> cell = new LinkedHashMap<>(views.view(number));
    cell.put("shown", number.estimate().map(text::value).orElse(""));
    // A count, or a point that was chosen, has no interval to print.
    Optional<Estimate> wide = number.estimate().filter(e -> e.bounds().width() > 0);
    cell.put("ends", wide.map(text::range).orElse(""));
    cell.put("low", wide.map(text::low).orElse(""));
    cell.put("high", wide.map(text::high).orElse(""));
    return cell;
  }

  private static Map<String, Object> row(String label, List<Map<String, Object>> cells) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("label", label);
    row.put("unit", "");
    row.put("cells", cells);
    return row;
  }

  /** The head of a column with its unit, which may be empty. */
  static Map<String, Object> head(String label, String unit) {
    return Map.of("label", label, "unit", unit);
  }

  private static Map<String, Object> table(
      String first, List<Map<String, Object>> heads, String unit, List<Map<String, Object>> rows) {
    return Map.of("first", first, "heads", heads, "unit", unit, "rows", rows);
  }
}
