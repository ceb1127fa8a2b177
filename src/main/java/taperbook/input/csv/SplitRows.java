package taperbook.input.csv;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * Rows of a table's cells, created on each access: a view of two numbers, which costs less than
 * keeping thousands of objects. Immutable once a table is split.
 */
final class SplitRows extends AbstractList<CsvRow> implements RandomAccess {
  private final TableCells cells;

  /** Line, text index and first cell of each row, followed by those after the last row. */
  private final int[] lines;

  private final int[] begins;
  private final int[] firsts;
  private final int from;
  private final int to;

  private SplitRows(TableCells cells, int[] lines, int[] begins, int[] firsts, int from, int to) {
    this.cells = cells;
    this.lines = lines;
    this.begins = begins;
    this.firsts = firsts;
    this.from = from;
    this.to = to;
  }

  @Override
  public CsvRow get(int index) {
    int row = from + Objects.checkIndex(index, size());
    return new CsvRow(lines[row], cells, begins[row], firsts[row], firsts[row + 1] - firsts[row]);
  }

  @Override
  public int size() {
    return to - from;
  }

  @Override
  public List<CsvRow> subList(int fromInclusive, int toExclusive) {
    Objects.checkFromToIndex(fromInclusive, toExclusive, size());
    return new SplitRows(cells, lines, begins, firsts, from + fromInclusive, from + toExclusive);
  }

  /** Collects rows. */
  static final class Gathering {
    private static final int FIRST_ROOM = 1024;

    private final TableCells cells;
    private int[] lines = new int[FIRST_ROOM];
    private int[] begins = new int[FIRST_ROOM];
    private int[] firsts = new int[FIRST_ROOM];
    private int count;

    Gathering(TableCells cells) {
      this.cells = cells;
    }

    /** Adds a row of all cells added since the last row, unless they are blank. */
    void row(int line, int begin) {
      int first = firsts[count];
      if (isBlank(line, begin, first)) {
        cells.shorten(first);
        return;
      }
      if (count + 1 == lines.length) {
        lines = Arrays.copyOf(lines, 2 * lines.length);
        begins = Arrays.copyOf(begins, 2 * begins.length);
        firsts = Arrays.copyOf(firsts, 2 * firsts.length);
      }
      lines[count] = line;
      begins[count] = begin;
      count++;
      firsts[count] = cells.size();
    }

    private boolean isBlank(int line, int begin, int first) {
      return Double.isNaN(cells.number(first))
          && new CsvRow(line, cells, begin, first, cells.size() - first).isBlank();
    }

    SplitRows rows() {
      return new SplitRows(cells, lines, begins, firsts, 0, count);
    }
  }
}
