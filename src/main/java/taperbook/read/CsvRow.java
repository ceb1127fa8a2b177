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
    return index < cells.size() ? stripped(cells.get(index)) : "";
  }

  /** Most cells begin and end with plain characters, and thousands are asked for. */
  private static String stripped(String cell) {
    int last = cell.length() - 1;
    return last < 0 || (isPlain(cell.charAt(0)) && isPlain(cell.charAt(last)))
        ? cell
        : cell.strip();
  }

  private static boolean isPlain(char c) {
    return c > ' ' && c < 0x7f;
  }

  /** True if no cell has anything but spaces. */
  public boolean isBlank() {
    for (int i = 0; i < cells.size(); i++) {
      if (!cells.get(i).isBlank()) {
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
