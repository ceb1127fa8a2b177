package taperbook.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The rows of a text without quotes, in which nothing but line ends and delimiters can mean
 * anything. It gives what Commons CSV gives, several times as fast: a logger's file has tens of
 * thousands of cells and no quote.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180#section-2">RFC 4180, section 2, rules 1 to
 *     4</a>
 */
final class UnquotedRows {
  private static final int FIRST_ROOM = 1024;

  private final String text;
  private final char delimiter;

  /** Where each cell begins and ends, in turn. */
  private int[] ends = new int[FIRST_ROOM];

  private int cells;

  /** The line of each row, and the number of cells up to its end, in turn. */
  private int[] rows = new int[FIRST_ROOM];

  private int count;

  UnquotedRows(String text, char delimiter) {
    this.text = text;
    this.delimiter = delimiter;
  }

  /** The rows that are not blank, in order, with the lines that they stand on. */
  List<CsvRow> list() {
    int line = 1;
    int begin = 0;
    int length = text.length();
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      if (c == delimiter) {
        cell(begin, i);
        begin = i + 1;
      } else if (LineCounter.isLineEnd(c)) {
        cell(begin, i);
        row(line);
        if (c == '\r' && i + 1 < length && text.charAt(i + 1) == '\n') {
          i++;
        }
        begin = i + 1;
        line++;
      }
    }
    cell(begin, length);
    row(line);
    return made();
  }

  private void cell(int begin, int end) {
    if (2 * cells == ends.length) {
      ends = Arrays.copyOf(ends, 2 * ends.length);
    }
    ends[2 * cells] = begin;
    ends[2 * cells + 1] = end;
    cells++;
  }

  private void row(int line) {
    if (2 * count == rows.length) {
      rows = Arrays.copyOf(rows, 2 * rows.length);
    }
    rows[2 * count] = line;
    rows[2 * count + 1] = cells;
    count++;
  }

  private List<CsvRow> made() {
    List<CsvRow> made = new ArrayList<>(count);
    int first = 0;
    for (int i = 0; i < count; i++) {
      int next = rows[2 * i + 1];
      CsvRow row = new CsvRow(rows[2 * i], text, ends, first, next - first);
      if (!row.isBlank()) {
        made.add(row);
      }
      first = next;
    }
    return made;
  }
}
