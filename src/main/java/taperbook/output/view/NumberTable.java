package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.format.ColumnFormat;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Estimate;
import taperbook.result.ReportNumber;

/**
 * Tables of numbers for a template and for an article: {@code first} and {@code heads} of the
 * columns ({@code label} and {@code unit}), {@code unit} if all columns share one, and {@code rows}
 * of {@code label}, {@code unit} and {@code cells}. A cell is a number with its additional texts
 * for the table, {@code shown}, {@code ends}, {@code low} and {@code high}.
 */
final class NumberTable {
  private final NumberViews views;
  private final NumberFormatter formatter;

  NumberTable(NumberViews views, NumberFormatter formatter) {
    this.views = views;
    this.formatter = formatter;
  }

  /**
   * A row of a table.
   *
   * @param label its heading
   * @param numbers its numbers; empty if a column has none
   */
  record Row(String label, List<Optional<ReportNumber>> numbers) {
    Row {
      numbers = List.copyOf(numbers);
    }
  }

  /** Returns a table whose columns have a unit and a precision each. */
  Map<String, Object> byColumn(String first, List<String> heads, List<Row> rows) {
    List<Texts> texts =
        IntStream.range(0, heads.size())
            .mapToObj(i -> texts(rows.stream().map(r -> r.numbers().get(i)).toList()))
            .toList();
    List<String> units = texts.stream().map(Texts::unit).toList();
    boolean differs = texts.stream().anyMatch(t -> t.other().isPresent());
    boolean one = heads.size() > 1 && units.stream().distinct().count() == 1 && !differs;
    return table(
        first,
        IntStream.range(0, heads.size())
            .mapToObj(i -> one ? head(heads.get(i), "") : texts.get(i).head(heads.get(i)))
            .toList(),
        one ? units.get(0) : "",
        rows.stream().map(r -> row(r.label(), cells(r.numbers(), texts))).toList());
  }

  /** Returns a table whose rows have a unit and a precision each; labels include the unit. */
  Map<String, Object> byRow(String first, List<String> heads, List<Row> rows) {
    return table(
        first,
        heads.stream().map(h -> head(h, "")).toList(),
        "",
        rows.stream().map(this::row).toList());
  }

  /** Returns a row whose cells share a unit and a precision. */
  Map<String, Object> row(Row row) {
    Texts texts = texts(row.numbers());
    Map<String, Object> made =
        row(row.label(), cells(row.numbers(), row.numbers().stream().map(n -> texts).toList()));
    made.putAll(texts.head(row.label()));
    return made;
  }

  /** Returns a row of a table, for a page to add columns that are not numbers. */
  @SuppressWarnings("unchecked")
  static Map<String, Object> rowOf(Map<String, Object> table, int index) {
    return ((List<Map<String, Object>>) Objects.requireNonNull(table.get("rows"))).get(index);
  }

  private Texts texts(List<Optional<ReportNumber>> numbers) {
    List<ReportNumber> present = numbers.stream().flatMap(Optional::stream).toList();
    if (present.isEmpty()) {
      return new Texts(Optional.empty(), Optional.empty());
    }
    Optional<ColumnFormat> other =
        views.differs(present.get(0).unit())
            ? Optional.of(new ColumnFormat(present, views.other()))
            : Optional.empty();
    return new Texts(Optional.of(new ColumnFormat(present, formatter)), other);
  }

  private List<Map<String, Object>> cells(List<Optional<ReportNumber>> numbers, List<Texts> texts) {
    List<Map<String, Object>> cells = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      Texts text = texts.get(i);
      cells.add(numbers.get(i).map(n -> cell(n, text)).orElseGet(() -> NumberViews.absent("")));
    }
    return cells;
  }

  private Map<String, Object> cell(ReportNumber number, Texts texts) {
    Map<String, Object> cell = new LinkedHashMap<>(views.view(number));
    cell.putAll(shown(number, texts.own().orElseThrow()));
    texts.other().ifPresent(other -> cell.put("other", shown(number, other)));
    return cell;
  }

  /** Returns the texts of a cell; a count or a chosen point has no interval. */
  private static Map<String, Object> shown(ReportNumber number, ColumnFormat text) {
    Optional<Estimate> wide = number.estimate().filter(e -> e.bounds().width() > 0);
    return Map.of(
        "shown", number.estimate().map(text::value).orElse(""),
        "ends", wide.map(text::range).orElse(""),
        "low", wide.map(text::low).orElse(""),
        "high", wide.map(text::high).orElse(""));
  }

  /**
   * The texts of a column or a row.
   *
   * @param own in the report's units; empty if there is no number
   * @param other in the other unit of distance; empty if that is the same
   */
  private record Texts(Optional<ColumnFormat> own, Optional<ColumnFormat> other) {
    String unit() {
      return own.map(ColumnFormat::unit).orElse("");
    }

    Map<String, Object> head(String label) {
      Map<String, Object> head = new LinkedHashMap<>(NumberTable.head(label, unit()));
      other.ifPresent(o -> head.put("other", Map.of("unit", o.unit())));
      return head;
    }
  }

  private static Map<String, Object> row(String label, List<Map<String, Object>> cells) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("label", label);
    row.put("unit", "");
    row.put("cells", cells);
    return row;
  }

  /** Returns the heading of a column with its unit, which may be empty. */
  static Map<String, Object> head(String label, String unit) {
    return Map.of("label", label, "unit", unit);
  }

  private static Map<String, Object> table(
      String first, List<Map<String, Object>> heads, String unit, List<Map<String, Object>> rows) {
    return Map.of("first", first, "heads", heads, "unit", unit, "rows", rows);
  }
}
