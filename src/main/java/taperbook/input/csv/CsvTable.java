package taperbook.input.csv;

import java.util.List;

/**
 * A CSV file as rows of text.
 *
 * @param file path relative to the project folder, with {@code /}
 * @param delimiter what stands between cells: comma, semicolon or tab
 * @param header the first row, without blank cells at its end
 * @param rows the other rows that are not blank; at least one, none with text beyond the header
 */
public record CsvTable(String file, char delimiter, CsvRow header, List<CsvRow> rows) {
  /** Copies the rows, unless they cannot change. */
  public CsvTable {
    rows = rows instanceof SplitRows ? rows : List.copyOf(rows);
  }

  /** True if numbers may have a decimal comma: the comma does not part cells. */
  public boolean takesDecimalComma() {
    return delimiter != ',';
  }
}
