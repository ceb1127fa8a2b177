package taperbook.input.csv;

import java.util.Arrays;
import java.util.List;

/**
 * The cells of a table, one after the other: where each ends in the text, and its number if it is a
 * plain decimal. A logger's file has tens of thousands of them, so that there is no object for
 * each.
 */
final class TableCells {
  private static final int LEAST_ROOM = 16;

  private final String text;
  private int[] ends;

  /** NaN for what is no plain decimal. */
  private double[] numbers;

  private byte[] decimals;
  private int size;

  /**
   * No cells yet.
   *
   * @param room how many are awaited; it grows if there are more
   */
  TableCells(String text, int room) {
    int begun = Math.max(LEAST_ROOM, room);
    this.text = text;
    this.ends = new int[begun];
    this.numbers = new double[begun];
    this.decimals = new byte[begun];
  }

  /** The cells of one row, given one by one. */
  static TableCells of(List<String> row) {
    String text = String.join("\n", row);
    char[] characters = text.toCharArray();
    TableCells cells = new TableCells(text, row.size());
    DecimalParser decimal = new DecimalParser();
    int begin = 0;
    for (String cell : row) {
      int end = begin + cell.length();
      boolean whole = decimal.read(characters, begin, end) == end;
      cells.add(end, whole ? decimal.value() : Double.NaN, decimal.decimals());
      begin = end + 1;
    }
    return cells;
  }

  /**
   * Adds a cell.
   *
   * @param end where it ends in the text; it begins one place after the end of the one before, if
   *     it is not the first of its row
   * @param number its number; NaN if it is no plain decimal
   * @param places how many decimals that has
   */
  void add(int end, double number, int places) {
    if (size == ends.length) {
      ends = Arrays.copyOf(ends, 2 * size);
      numbers = Arrays.copyOf(numbers, 2 * size);
      decimals = Arrays.copyOf(decimals, 2 * size);
    }
    ends[size] = end;
    numbers[size] = number;
    decimals[size] = (byte) places;
    size++;
  }

  /** Takes away the last cells. */
  void shorten(int left) {
    size = left;
  }

  int size() {
    return size;
  }

  String text() {
    return text;
  }

  int end(int cell) {
    return ends[cell];
  }

  double number(int cell) {
    return numbers[cell];
  }

  int decimals(int cell) {
    return decimals[cell];
  }
}
