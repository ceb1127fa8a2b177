package taperbook.input.csv;

import java.util.List;

/**
 * A CSV file as rows of text.
 *
 * @param file path relative to the project folder, with {@code /}
 * @param delimiter the cell delimiter: comma, semicolon or tab
 * @param header the first row, without blank cells at its end
 * @param rows the other rows that are not blank; at least one, none with text beyond the header
 */
public record CsvTable(String file, char delimiter, CsvRow header, List<CsvRow> rows) {
  /** Copies the rows. */
  public CsvTable {
    rows = List.copyOf(rows);
  }

  /**
   * Returns true if numbers may have a decimal comma because the comma is not the cell delimiter.
   */
  public boolean takesDecimalComma() {
    return delimiter != ',';
  }
}
