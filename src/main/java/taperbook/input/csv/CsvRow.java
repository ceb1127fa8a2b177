package taperbook.input.csv;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * A row of a CSV file: a stretch of its text. Cells become strings only when they are asked for, as
 * a logger's file has tens of thousands of them and almost all are numbers, which were read when
 * the text was split.
 */
public final class CsvRow {
  private final int line;

  /** The cells of many rows, perhaps. */
  private final TableCells table;

  private final int textBegin;
  private final int first;
  private final int size;

  /**
   * The row of some cells of a table.
   *
   * @param textBegin where its first cell begins in the text
   * @param first index of its first cell among all
   */
  CsvRow(int line, TableCells table, int textBegin, int first, int size) {
    this.line = line;
    this.table = table;
    this.textBegin = textBegin;
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
    this(line, TableCells.of(cells), 0, 0, cells.size());
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
    return index < size ? table.text().substring(begin(index), end(index)) : "";
  }

  /** True if the row is shorter, or the cell has nothing but spaces. */
  public boolean isBlankAt(int index) {
    return index >= size
        || (Double.isNaN(table.number(first + index)) && begin(index) == writtenEnd(index));
  }

  /**
   * The number in a cell that holds a plain decimal and nothing else but spaces around it: digits
   * with or without a decimal point in the middle and a minus before them.
   *
   * @return the number; NaN if the cell holds anything else or the row is shorter
   */
  public double number(int index) {
    return index < size ? table.number(first + index) : Double.NaN;
  }

  /** How many decimals the number in a cell is written with, if there is one. */
  public int decimals(int index) {
    return table.decimals(first + index);
  }

  private int writtenBegin(int index) {
    return index == 0 ? textBegin : table.end(first + index - 1) + 1;
  }

  private int writtenEnd(int index) {
    return table.end(first + index);
  }

  /** Where a cell without the spaces around it begins in the text. */
  private int begin(int index) {
    int place = writtenBegin(index);
    int end = writtenEnd(index);
    while (place < end && isSpace(table.text().charAt(place))) {
      place++;
    }
    return place;
  }

  /** Where a cell without the spaces around it ends in the text. */
  private int end(int index) {
    int begin = begin(index);
    int place = writtenEnd(index);
    while (place > begin && isSpace(table.text().charAt(place - 1))) {
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

  /** The cells as strings, each made anew when it is asked for. */
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
