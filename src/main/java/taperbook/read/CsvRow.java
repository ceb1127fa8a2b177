package taperbook.read;

import java.util.List;

/**
 * A row of a CSV file.
 *
 * @param line line that the row starts on, from 1
 * @param cells the cells as written, quotes taken off
 */
public record CsvRow(int line, List<String> cells) {
  /** Copies the cells. */
  public CsvRow {
    cells = List.copyOf(cells);
  }

  /** The cell with this index from 0 without spaces around it; empty if the row is shorter. */
  public String cell(int index) {
    return index < cells.size() ? cells.get(index).strip() : "";
  }

  /** True if no cell has anything but spaces. */
  public boolean isBlank() {
    for (String cell : cells) {
      if (!cell.isBlank()) {
        return false;
      }
    }
    return true;
  }

  /** The row without the blank cells at its end. */
  CsvRow withoutTrailingBlanks() {
    int size = cells.size();
    while (size > 0 && cells.get(size - 1).isBlank()) {
      size--;
    }
    return new CsvRow(line, cells.subList(0, size));
  }
}
