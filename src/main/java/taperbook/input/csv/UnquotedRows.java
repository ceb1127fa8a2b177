package taperbook.input.csv;

import java.util.List;

/**
 * The rows of a text without quotes, in which nothing but line ends and delimiters can mean
 * anything. It gives what Commons CSV gives, several times as fast: a logger's file has tens of
 * thousands of cells and no quote. Plain decimals are read in the same walk through the text.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180#section-2">RFC 4180, section 2, rules 1 to
 *     4</a>
 */
final class UnquotedRows {
  /** About as many characters a logger's cell has; only to make room. */
  private static final int CHARACTERS_OF_A_CELL = 5;

  private final char[] text;
  private final char delimiter;
  private final TableCells cells;
  private final DecimalParser decimal = new DecimalParser();

  UnquotedRows(String text, char delimiter) {
    this.text = text.toCharArray();
    this.delimiter = delimiter;
    this.cells = new TableCells(text, text.length() / CHARACTERS_OF_A_CELL);
  }

  /** The rows that are not blank, in order, with the lines that they stand on. */
  List<CsvRow> list() {
    SplitRows.Gathering rows = new SplitRows.Gathering(cells);
    int line = 1;
    int begin = 0;
    while (begin <= text.length) {
      int end = cell(begin);
      while (end < text.length && text[end] == delimiter) {
        end = cell(end + 1);
      }
      rows.row(line, begin);
      boolean pair = end + 1 < text.length && text[end] == '\r' && text[end + 1] == '\n';
      begin = end + (pair ? 2 : 1);
      line++;
    }
    return rows.rows();
  }

  /** Adds the cell that begins at a place; returns the place of the delimiter or line end after. */
  private int cell(int begin) {
    int end = decimal.read(text, begin, text.length);
    if (isEnd(end)) {
      cells.add(end, decimal.value(), decimal.decimals());
      return end;
    }
    while (!isEnd(end)) {
      end++;
    }
    cells.add(end, Double.NaN, 0);
    return end;
  }

  private boolean isEnd(int place) {
    return place == text.length || text[place] == delimiter || LineCounter.isLineEnd(text[place]);
  }
}
