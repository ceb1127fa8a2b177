package taperbook.input.csv;

import java.util.Arrays;
import java.util.List;

/**
 * The cells of a table in sequence: the end index of each in the text, and its number if it is a
 * plain decimal. Uses arrays instead of objects, because a log has tens of thousands of cells.
 */
final class TableCells {
  private static final int MIN_CAPACITY = 16;

  private final String text;
  private int[] ends;

  /** NaN for a cell that is not a plain decimal. */
  private double[] numbers;

  private byte[] decimals;
  private int size;

  /**
   * Creates an empty sequence.
   *
   * @param capacity expected number of cells; the capacity grows if there are more
   */
  TableCells(String text, int capacity) {
    int started = Math.max(MIN_CAPACITY, capacity);
    this.text = text;
    this.ends = new int[started];
    this.numbers = new double[started];
    this.decimals = new byte[started];
  }

  /** Creates the cells of a single row. */
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
   * @param end its end index in the text; unless it is the first of its row, it begins one
   *     character after the end of the previous one
   * @param number its number; NaN if it is not a plain decimal
   * @param places number of decimal places
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

  /** Removes the last cells. */
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
