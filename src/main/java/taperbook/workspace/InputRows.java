package taperbook.workspace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import taperbook.input.csv.CsvLayout;
import taperbook.input.csv.CsvParser;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.input.mapping.ColumnMap;
import taperbook.input.mapping.ColumnMapParser;
import taperbook.session.InputFile;
import taperbook.session.RowRef;

/** The input rows of a number, with their content. */
public final class InputRows {
  private static final int MAX_SHOWN = 12;

  private final Map<String, CsvTable> tables = new HashMap<>();

  public InputRows(List<InputFile> files) {
    for (InputFile file : files) {
      if (file.path().endsWith(".csv")) {
        CsvParser.read(file, layout(file, files))
            .value()
            .ifPresent(table -> tables.put(file.path(), table));
      }
    }
  }

  /**
   * Returns the layout of a file, according to the {@code columns.csv} in its folder if that names
   * it.
   */
  static CsvLayout layout(InputFile file, List<InputFile> files) {
    String folder = file.path().substring(0, file.path().lastIndexOf('/') + 1);
    return files.stream()
        .filter(f -> f.path().equals(folder + ColumnMap.FILE_NAME))
        .findFirst()
        .flatMap(f -> CsvParser.read(f).then(ColumnMapParser::check).value())
        .filter(map -> file.path().equals(folder + map.readingsName()))
        .map(ColumnMap::layout)
        .orElse(CsvLayout.PLAIN);
  }

  /**
   * Returns each row as its place and its content, at most twelve; omitted rows are counted. If
   * there are several files, at least some rows of each are shown.
   */
  public List<String> texts(List<RowRef> rows) {
    Map<String, List<RowRef>> byFile = new TreeMap<>();
    rows.forEach(r -> byFile.computeIfAbsent(r.file(), f -> new ArrayList<>()).add(r));
    Map<String, Integer> shown = shares(byFile);
    List<String> texts = new ArrayList<>();
    byFile.forEach((file, all) -> add(texts, all, shown.getOrDefault(file, 0)));
    return texts;
  }

  /** Returns how many rows of each file are shown: shortest lists first, the rest shared evenly. */
  private static Map<String, Integer> shares(Map<String, List<RowRef>> byFile) {
    Map<String, Integer> shares = new HashMap<>();
    int left = MAX_SHOWN;
    int files = byFile.size();
    List<Map.Entry<String, List<RowRef>>> shortestFirst =
        byFile.entrySet().stream()
            .sorted(
                Comparator.comparingInt((Map.Entry<String, List<RowRef>> e) -> e.getValue().size()))
            .toList();
    for (Map.Entry<String, List<RowRef>> entry : shortestFirst) {
      int share = Math.min(entry.getValue().size(), left / files);
      shares.put(entry.getKey(), share);
      left -= share;
      files--;
    }
    return shares;
  }

  private void add(List<String> texts, List<RowRef> rows, int shown) {
    rows.subList(0, shown).forEach(row -> texts.add(row + "\u00a0 " + content(row)));
    int more = rows.size() - shown;
    if (more == 1) {
      texts.add("... and 1 more, " + rows.get(shown));
    } else if (more > 1) {
      RowRef first = rows.get(shown);
      int last = rows.get(rows.size() - 1).line();
      texts.add(
          "... and " + more + " more, " + first.file() + " lines " + first.line() + " to " + last);
    }
  }

  private String content(RowRef ref) {
    Optional<CsvTable> table = Optional.ofNullable(tables.get(ref.file()));
    return table
        .flatMap(t -> t.rows().stream().filter(r -> r.line() == ref.line()).findFirst())
        .map(row -> content(table.orElseThrow().header(), row))
        .orElseThrow(() -> new IllegalStateException("no row of input is " + ref));
  }

  /** Returns the non-empty cells, each with its column header. */
  private static String content(CsvRow header, CsvRow row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < header.cells().size(); i++) {
      if (!row.cell(i).isEmpty()) {
        cells.add(header.cell(i) + " " + row.cell(i));
      }
    }
    return String.join(", ", cells);
  }
}
