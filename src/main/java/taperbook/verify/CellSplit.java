package taperbook.verify;

import java.util.ArrayList;
import java.util.List;

/** Splits a line of a table into its cells as written, including quotes (RFC 4180). */
final class CellSplit {
  private static final List<Character> DELIMITERS = List.of(',', ';', '\t');

  private CellSplit() {}

  /** Returns the delimiter that splits a line into the most cells. */
  static char delimiter(String line) {
    char best = DELIMITERS.get(0);
    for (char delimiter : DELIMITERS) {
      if (cells(line, delimiter).size() > cells(line, best).size()) {
        best = delimiter;
      }
    }
    return best;
  }

  /** Returns the cells of a line; joined by the delimiter they give the line again. */
  static List<String> cells(String line, char delimiter) {
    List<String> cells = new ArrayList<>();
    boolean quoted = false;
    int from = 0;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      quoted ^= c == '"';
      if (c == delimiter && !quoted) {
        cells.add(line.substring(from, i));
        from = i + 1;
      }
    }
    cells.add(line.substring(from));
    return cells;
  }
}
