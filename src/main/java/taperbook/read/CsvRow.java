package taperbook.read;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * A row of a CSV file: a stretch of its text. Cells become strings only when they are asked for, as
 * a logger's file has tens of thousands of them and almost all are numbers, which are read from the
 * text itself.
 */
public final class CsvRow {
  private final int line;
  private final String text;

  /** Where each cell begins and ends in the text, in turn; may be that of many rows. */
  private final int[] ends;

  private final int first;
  private final int size;

  /** The row of some cells in a table's text; the places are not copied. */
  CsvRow(int line, String text, int[] ends, int first, int size) {
    this.line = line;
    this.text = text;
    this.ends = ends;
    this.first = first;
    this.size = size;
  }

  /**
   * A row of these cells.
   *
   * @param line line that the row starts on, from 1
   * @param cells the cells as written, quotes taken off
   */
  public CsvRow(int line, List<String> cells) {
    this(line, String.join("", cells), endsOf(cells), 0, cells.size());
  }

  private static int[] endsOf(List<String> cells) {
    int[] ends = new int[2 * cells.size()];
    int place = 0;
    for (int i = 0; i < cells.size(); i++) {
      ends[2 * i] = place;
      place += cells.get(i).length();
      ends[2 * i + 1] = place;
    }
    return ends;
  }

  /** Line that the row starts on, from 1. */
  public int line() {
    return line;
  }

  /** Number of cells. */
  public int size() {
    return size;
  }

  /** The cells as written, quotes taken off. */
  public List<String> cells() {
    return new Cells();
  }

  /** The cell with this index from 0 without spaces around it; empty if the row is shorter. */
  public String cell(int index) {
    return text.substring(begin(index), end(index));
  }

  /** True if the row is shorter, or the cell has nothing but spaces. */
  public boolean isBlankAt(int index) {
    if (index >= size) {
      return true;
    }
    int place = ends[2 * (first + index)];
    int end = ends[2 * (first + index) + 1];
    return place == end || (isSpace(text.charAt(place)) && begin(index) == end);
  }

  /** The text that cells lie in. */
  public String text() {
    return text;
  }

  /** Where a cell without the spaces around it begins in the text. */
  public int begin(int index) {
    if (index >= size) {
      return 0;
    }
    int place = ends[2 * (first + index)];
    int end = ends[2 * (first + index) + 1];
    while (place < end && isSpace(text.charAt(place))) {
      place++;
    }
    return place;
  }

  /** Where a cell without the spaces around it ends in the text. */
  public int end(int index) {
    if (index >= size) {
      return 0;
    }
    int begin = ends[2 * (first + index)];
    int place = ends[2 * (first + index) + 1];
    if (place > begin && !isSpace(text.charAt(place - 1))) {
      return place;
    }
    begin = begin(index);
    while (place > begin && isSpace(text.charAt(place - 1))) {
      place--;
    }
    return place;
  }

  /** What {@link String#strip} takes off; most cells begin and end with plain characters. */
  private static boolean isSpace(char c) {
    return (c <= ' ' || c >= 0x7f) && Character.isWhitespace(c);
  }

  /** True if no cell has anything but spaces. */
  public boolean isBlank() {
    for (int i = 0; i < size; i++) {
      if (!isBlankAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** The row without the blank cells at its end. */
  CsvRow withoutTrailingBlanks() {
    int kept = size;
    while (kept > 0 && isBlankAt(kept - 1)) {
      kept--;
    }
    return new CsvRow(line, text, ends, first, kept);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CsvRow row && row.line == line && row.cells().equals(cells());
  }

  @Override
  public int hashCode() {
    return 31 * line + cells().hashCode();
  }

  @Override
  public String toString() {
    return "line " + line + ": " + cells();
  }

  /** The cells as strings, each made anew when it is asked for. */
  private final class Cells extends AbstractList<String> implements RandomAccess {
    @Override
    public String get(int index) {
      int at = 2 * (first + Objects.checkIndex(index, size));
      return text.substring(ends[at], ends[at + 1]);
    }

    @Override
    public int size() {
      return size;
    }
  }
}
