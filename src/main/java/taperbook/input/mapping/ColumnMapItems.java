package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.Column;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.cell.Columns;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.Suggestion;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;

/** The rows of {@code columns.csv} by their items. */
final class ColumnMapItems {
  static final String ITEM = "item";
  static final String SOURCE = "column or value";
  static final String UNIT = "unit";
  static final String FACTOR = "factor";
  static final String OFFSET = "offset";
  static final String FORMAT = "format";
  static final String MISSING = "missing";
  static final List<String> HEADS = List.of(ITEM, SOURCE, UNIT, FACTOR, OFFSET, FORMAT, MISSING);

  private final CsvTable table;
  private final List<String> items;
  private final ProblemLog log;
  private final Columns columns;
  private final Map<String, CsvRow> rows = new LinkedHashMap<>();

  /** Selects the rows of a table whose items are among those given. */
  ColumnMapItems(CsvTable table, List<String> items, ProblemLog log) {
    this.table = table;
    this.items = List.copyOf(items);
    this.log = log;
    this.columns = Columns.of(table, HEADS.stream().map(ColumnSpec::plain).toList(), log);
    columns.require(ITEM);
    columns.require(SOURCE);
    if (isUsable()) {
      table.rows().forEach(this::take);
    }
  }

  /** Returns true if there are enough headers to continue. */
  boolean isUsable() {
    return columns.find(ITEM).isPresent() && columns.find(SOURCE).isPresent();
  }

  CsvTable table() {
    return table;
  }

  /** Returns the items that have a row, in file order. */
  List<String> present() {
    return List.copyOf(rows.keySet());
  }

  /** Returns the cell under a header in an item's row; empty if there is no such row or column. */
  String cell(String item, String head) {
    return Optional.ofNullable(rows.get(item))
        .flatMap(row -> columns.find(head).map(c -> row.cell(c.index())))
        .orElse("");
  }

  /** Returns the line of an item's row; there must be one. */
  int line(String item) {
    return Optional.ofNullable(rows.get(item)).orElseThrow().line();
  }

  /** Returns the number of the cell under a header; 0 if there is no such column. */
  int number(String head) {
    return columns.find(head).map(Column::number).orElse(0);
  }

  /** Reports a problem of a cell in an item's row. */
  void report(ProblemCode code, String item, String head, String expected, String remedy) {
    String cell = cell(item, head);
    String found = cell.isEmpty() ? "no " + head + " for " + item : Quoted.of(cell);
    log.add(code, line(item), number(head), found, expected, remedy);
  }

  private void take(CsvRow row) {
    String item = NormalizedName.of(row.cell(number(ITEM) - 1));
    if (!items.contains(item)) {
      log.add(
          ProblemCode.ITEM_UNKNOWN,
          row.line(),
          number(ITEM),
          item.isEmpty() ? "a row without an item" : Quoted.of(row.cell(number(ITEM) - 1)),
          "an item of this file",
          Suggestion.of(item, items)
              .map(n -> "write " + Quoted.of(n))
              .orElseGet(() -> "take the row away, or write one of: " + unused()));
    } else if (rows.containsKey(item)) {
      log.add(
          ProblemCode.ITEM_TWICE,
          row.line(),
          number(ITEM),
          Quoted.of(item) + " as on line " + line(item),
          "each item once",
          "take one of the two rows away");
    } else {
      rows.put(item, row);
    }
  }

  private String unused() {
    List<String> left = new ArrayList<>(items);
    left.removeAll(rows.keySet());
    return left.stream().collect(Collectors.joining(", "));
  }
}
