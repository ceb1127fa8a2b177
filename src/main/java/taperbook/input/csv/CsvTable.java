package taperbook.input.csv;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A CSV file as rows of text.
 *
 * @param file path relative to the project folder, with {@code /}
 * @param delimiter the cell delimiter: comma, semicolon or tab
 * @param header the first row, without blank cells at its end
 * @param rows the other rows that are not blank; at least one, none with text beyond the header
 */
public record CsvTable(String file, char delimiter, CsvRow header, List<CsvRow> rows) {
  /** Copies the rows, to keep them in little memory. */
  public CsvTable {
    rows = PackedRows.of(rows);
  }

  /** Returns the table with each row replaced by another one or, if empty, left out. */
  public CsvTable withRows(Function<CsvRow, Optional<CsvRow>> other) {
    PackedRows replaced = new PackedRows(0);
    rows.forEach(row -> other.apply(row).ifPresent(r -> replaced.append(r.line(), r.cells())));
    return new CsvTable(file, delimiter, header, replaced);
  }

  /**
   * Returns true if numbers may have a decimal comma because the comma is not the cell delimiter.
   */
  public boolean takesDecimalComma() {
    return delimiter != ',';
  }
}
