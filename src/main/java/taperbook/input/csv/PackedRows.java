package taperbook.input.csv;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;

/**
 * Rows in one text, because a log has millions of cells, and an object for each takes ten times its
 * characters. Rows and cells are objects only while they are used.
 */
final class PackedRows extends AbstractList<CsvRow> implements RandomAccess {
  private static final int CAPACITY = 16;

  private final StringBuilder text;
  private int[] cellEnds = new int[CAPACITY];
  private int[] rowEnds = new int[CAPACITY];
  private int[] lines = new int[CAPACITY];
  private int cells;
  private int size;

  /**
   * Creates an empty list, to which {@link #append} adds rows.
   *
   * @param capacity expected number of characters
   */
  PackedRows(int capacity) {
    this.text = new StringBuilder(capacity);
  }

  /** Returns the rows, packed unless they are already. */
  static PackedRows of(List<CsvRow> rows) {
    if (rows instanceof PackedRows packed) {
      return packed;
    }
    PackedRows packed = new PackedRows(0);
    rows.forEach(row -> packed.append(row.line(), row.cells()));
    return packed;
  }

  /** Appends a row. */
  void append(int line, List<String> row) {
    for (String cell : row) {
      text.append(cell);
      cellEnds = withRoom(cellEnds, cells);
      cellEnds[cells] = text.length();
      cells++;
    }
    rowEnds = withRoom(rowEnds, size);
    rowEnds[size] = cells;
    lines = withRoom(lines, size);
    lines[size] = line;
    size++;
  }

  private static int[] withRoom(int[] numbers, int used) {
    return used < numbers.length ? numbers : Arrays.copyOf(numbers, 2 * used);
  }

  @Override
  public CsvRow get(int index) {
    int first = index == 0 ? 0 : rowEnds[index - 1];
    return new CsvRow(lines[index], new Cells(first, rowEnds[index] - first));
  }

  @Override
  public int size() {
    return size;
  }

  private final class Cells extends AbstractList<String> implements RandomAccess {
    private final int first;
    private final int count;

    Cells(int first, int count) {
      this.first = first;
      this.count = count;
    }

    @Override
    public String get(int index) {
      if (index < 0 || index >= count) {
        throw new IndexOutOfBoundsException(index);
      }
      int cell = first + index;
      return text.substring(cell == 0 ? 0 : cellEnds[cell - 1], cellEnds[cell]);
    }

    @Override
    public int size() {
      return count;
    }
  }
}
