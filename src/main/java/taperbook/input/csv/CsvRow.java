package taperbook.input.csv;

import java.util.List;

/**
 * A row of a CSV file.
 *
 * @param line the line that it starts on, from 1
 * @param cells the cells without their quotes; not changed afterwards
 */
public record CsvRow(int line, List<String> cells) {
  public int size() {
    return cells.size();
  }

  /** Returns the trimmed cell with this index from 0; empty if the row is shorter. */
  public String cell(int index) {
    return index < cells.size() ? cells.get(index).strip() : "";
  }

  /** Returns true if the row is shorter, or the cell is blank. */
  public boolean isBlankAt(int index) {
    return index >= cells.size() || cells.get(index).isBlank();
  }

  /** Returns true if all cells are blank. */
  boolean isBlank() {
    return cells.stream().allMatch(String::isBlank);
  }

  /** Returns the row without the blank cells at its end. */
  CsvRow withoutTrailingBlanks() {
    int kept = size();
    while (kept > 0 && isBlankAt(kept - 1)) {
      kept--;
    }
    return new CsvRow(line, cells.subList(0, kept));
  }
}
