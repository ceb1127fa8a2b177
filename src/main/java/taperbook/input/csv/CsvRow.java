package taperbook.input.csv;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * A row of a CSV file: a section of its text. Strings are created on demand, because a log has tens
 * of thousands of cells and almost all are numbers, which were parsed when the text was split.
 */
public final class CsvRow {
  private final int line;

  /** Cells that other rows may share. */
  private final TableCells table;

  private final int textBegin;
  private final int first;
  private final int size;

  /**
   * Creates a row from cells of a table.
   *
   * @param textBegin index of its first cell's text
   * @param first index of its first cell among all cells
   */
  CsvRow(int line, TableCells table, int textBegin, int first, int size) {
    this.line = line;
    this.table = table;
    this.textBegin = textBegin;
    this.first = first;
    this.size = size;
  }

  /**
   * Creates a row with these cells.
   *
   * @param line line that the row starts on, from 1
   * @param cells the cells without their quotes
   */
  public CsvRow(int line, List<String> cells) {
    this(line, TableCells.of(cells), 0, 0, cells.size());
  }

  /** Returns the line that the row starts on, from 1. */
  public int line() {
    return line;
  }

  public int size() {
    return size;
  }

  /** Returns the cells without their quotes. */
  public List<String> cells() {
    return new Cells();
  }

  /** Returns the trimmed cell with this index from 0; empty if the row is shorter. */
  public String cell(int index) {
    return index < size ? table.text().substring(begin(index), end(index)) : "";
  }

  /** Returns true if the row is shorter, or the cell is blank. */
  public boolean isBlankAt(int index) {
    return index >= size
        || (Double.isNaN(table.number(first + index)) && begin(index) == writtenEnd(index));
  }

  /**
   * Returns the number in a cell that contains only a plain decimal, possibly with surrounding
   * spaces: an optional minus and digits with or without a decimal point in the middle.
   *
   * @return the number; NaN if the cell contains anything else or the row is shorter
   */
  public double number(int index) {
    return index < size ? table.number(first + index) : Double.NaN;
  }

  /** Returns the number of decimal places of the number in a cell, if there is one. */
  public int decimals(int index) {
    return table.decimals(first + index);
  }

  private int writtenBegin(int index) {
    return index == 0 ? textBegin : table.end(first + index - 1) + 1;
  }

  private int writtenEnd(int index) {
    return table.end(first + index);
  }

  /** Returns the start index of a trimmed cell in the text. */
  private int begin(int index) {
    int place = writtenBegin(index);
    int end = writtenEnd(index);
    while (place < end && isSpace(table.text().charAt(place))) {
      place++;
    }
    return place;
  }

  /** Returns the end index of a trimmed cell in the text. */
  private int end(int index) {
    int begin = begin(index);
    int place = writtenEnd(index);
    while (place > begin && isSpace(table.text().charAt(place - 1))) {
      place--;
    }
    return place;
  }

  /**
   * Matches the characters that {@link String#strip} removes; most cells begin and end with plain
   * characters.
   */
  private static boolean isSpace(char c) {
    return (c <= ' ' || c >= 0x7f) && Character.isWhitespace(c);
  }

  /** Returns true if all cells are blank. */
  public boolean isBlank() {
    for (int i = 0; i < size; i++) {
      if (!isBlankAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** Returns the row without the blank cells at its end. */
  CsvRow withoutTrailingBlanks() {
    int kept = size;
    while (kept > 0 && isBlankAt(kept - 1)) {
      kept--;
    }
    return new CsvRow(line, table, textBegin, first, kept);
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

  /** The cells as strings, created on each access. */
  private final class Cells extends AbstractList<String> implements RandomAccess {
    @Override
    public String get(int index) {
      Objects.checkIndex(index, size);
      return table.text().substring(writtenBegin(index), writtenEnd(index));
    }

    @Override
    public int size() {
      return size;
    }
  }
}
