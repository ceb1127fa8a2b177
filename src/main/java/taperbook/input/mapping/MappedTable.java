package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.input.cell.ClockFormat;
import taperbook.input.cell.Column;
import taperbook.input.cell.Columns;
import taperbook.input.cell.NumberParser;
import taperbook.input.cell.Suggestion;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.input.readings.ReadingsParser;

/**
 * An external table mapped by a {@link ColumnMap}; rows keep their line numbers, and cells their
 * column numbers.
 */
public final class MappedTable {
  private static final int MAX_HEADS = 30;

  private final ColumnMap map;
  private final CsvTable foreign;
  private final ProblemLog mapLog;
  private final List<String> heads;
  private final Map<String, Integer> indices = new LinkedHashMap<>();

  public MappedTable(ColumnMap map, CsvTable foreign, ProblemLog mapLog) {
    this.map = map;
    this.foreign = foreign;
    this.mapLog = mapLog;
    this.heads = foreign.header().cells().stream().map(String::strip).toList();
    Map<Integer, ColumnMap.Entry> taken = new LinkedHashMap<>();
    for (ColumnMap.Entry entry : map.entries()) {
      OptionalInt index = index(entry);
      if (index.isPresent()) {
        ColumnMap.Entry other = taken.putIfAbsent(index.getAsInt(), entry);
        if (other != null) {
          reportDuplicate(entry, other);
        }
        indices.put(entry.item(), index.getAsInt());
      }
    }
  }

  /** Returns the readings; may be called only if every column was found. */
  public ReadingsParser readings(ProblemLog log) {
    NumberParser numbers =
        map.whole()
            .decimalMark()
            .map(mark -> NumberParser.forCells(mark, log))
            .orElseGet(() -> NumberParser.forCells(foreign.takesDecimalComma(), log));
    map.whole().thousands().ifPresent(numbers::grouping);
    CsvTable clean =
        foreign.withRows(row -> isHeader(row) ? Optional.empty() : Optional.of(clean(row)));
    Columns columns = Columns.stated(clean, ReadingsParser.specs(), columns(), log);
    return new ReadingsParser(clean, columns, numbers, log);
  }

  private Map<String, Column> columns() {
    OptionalInt date =
        indices.containsKey(ColumnMapParser.DATE)
            ? OptionalInt.of(at(ColumnMapParser.DATE))
            : OptionalInt.empty();
    Map<String, Column> columns = new LinkedHashMap<>();
    for (ColumnMap.Entry entry : map.entries()) {
      if (!entry.item().equals(ColumnMapParser.DATE)) {
        ClockFormat form = new ClockFormat(entry.writing(), map.whole().zone());
        columns.put(
            entry.item(),
            new Column(entry.item(), at(entry.item()), entry.unit(), entry.scale(), form, date));
      }
    }
    return columns;
  }

  private int at(String item) {
    return Optional.ofNullable(indices.get(item)).orElseThrow();
  }

  /** Logs repeat their headers when recording resumes. */
  private boolean isHeader(CsvRow row) {
    return row.cell(0).equals(heads.get(0))
        && row.cells().stream().map(String::strip).toList().equals(heads);
  }

  /** Returns the row with an empty cell for each mark of a missing value. */
  private CsvRow clean(CsvRow row) {
    CsvRow clean = row;
    for (ColumnMap.Entry entry : map.entries()) {
      int index = at(entry.item());
      if (hasMarks(entry) && index < row.size() && isMark(row.cell(index), entry)) {
        List<String> cells = new ArrayList<>(clean.cells());
        cells.set(index, "");
        clean = new CsvRow(row.line(), cells);
      }
    }
    return clean;
  }

  private boolean hasMarks(ColumnMap.Entry entry) {
    return !entry.marks().isEmpty() || !map.whole().marks().isEmpty();
  }

  private boolean isMark(String cell, ColumnMap.Entry entry) {
    String plain = cell.strip().toLowerCase(Locale.ROOT);
    return isMark(plain, entry.marks()) || isMark(plain, map.whole().marks());
  }

  private static boolean isMark(String cell, Set<String> marks) {
    return !marks.isEmpty()
        && (marks.contains(cell)
            || (cell.contains(".") && marks.contains(cell.replaceAll("\\.?0*$", ""))));
  }

  private OptionalInt index(ColumnMap.Entry entry) {
    if (entry.source().matches("#[0-9]{1,4}")) {
      int number = Integer.parseInt(entry.source().substring(1));
      if (number >= 1 && number <= heads.size()) {
        return OptionalInt.of(number - 1);
      }
      reportMissing(entry);
      return OptionalInt.empty();
    }
    List<Integer> found =
        IntStream.range(0, heads.size())
            .filter(i -> heads.get(i).equals(entry.source()))
            .boxed()
            .toList();
    if (found.size() == 1) {
      return OptionalInt.of(found.get(0));
    }
    if (found.isEmpty()) {
      reportMissing(entry);
    } else {
      ambiguous(entry, found);
    }
    return OptionalInt.empty();
  }

  private void reportMissing(ColumnMap.Entry entry) {
    String all = heads.stream().limit(MAX_HEADS).map(Quoted::of).collect(Collectors.joining(", "));
    report(
        ProblemCode.COLUMN_MISSING,
        entry,
        Quoted.of(entry.source()),
        Texts.of(
            "input.mapped_table.one_of_columns_of_line",
            foreign.file(),
            foreign.header().line(),
            all,
            heads.size() > MAX_HEADS ? Texts.of("input.common.and_more") : ""),
        Suggestion.remedy(
            entry.source(), heads, Texts.of("input.mapped_table.write_head_as_it_stands")));
  }

  private void ambiguous(ColumnMap.Entry entry, List<Integer> found) {
    report(
        ProblemCode.COLUMN_TWICE,
        entry,
        Texts.of(
            "input.mapped_table.which_is_head_of_columns", Quoted.of(entry.source()), found.size()),
        Texts.of("input.mapped_table.one_column"),
        Texts.of(
            "input.mapped_table.write_number_of_one_that",
            Joined.or(found.stream().map(i -> "#" + (i + 1)).toList())));
  }

  private void reportDuplicate(ColumnMap.Entry entry, ColumnMap.Entry other) {
    report(
        ProblemCode.COLUMN_TWICE,
        entry,
        Texts.of(
            "input.mapped_table.as_for_on_line",
            Quoted.of(entry.source()),
            other.item(),
            other.line()),
        Texts.of("input.mapped_table.each_column_for_one_item"),
        Texts.of("input.mapped_table.name_another_column_or_take"));
  }

  private void report(
      ProblemCode code, ColumnMap.Entry entry, String found, String expected, String remedy) {
    mapLog.add(code, entry.line(), map.sourceNumber(), found, expected, remedy);
  }
}
