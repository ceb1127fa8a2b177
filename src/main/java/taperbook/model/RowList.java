package taperbook.model;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.RandomAccess;

/**
 * Rows of input in order and without repeats, kept as unbroken runs of lines: the thousands of rows
 * behind a logger's number take as much memory as two.
 */
final class RowList extends AbstractList<RowRef> implements RandomAccess {
  private final String[] files;
  private final int[] firstLines;

  /** Index of the first row of each run, and at the end the number of all rows. */
  private final int[] starts;

  private RowList(String[] files, int[] firstLines, int[] starts) {
    this.files = files;
    this.firstLines = firstLines;
    this.starts = starts;
  }

  /** The rows, sorted, each once. */
  static List<RowRef> of(Collection<RowRef> rows) {
    if (rows instanceof RowList list) {
      return list;
    }
    List<RowRef> sorted = rows.stream().sorted().distinct().toList();
    List<Integer> runs = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      if (i == 0 || !follows(sorted.get(i - 1), sorted.get(i))) {
        runs.add(i);
      }
    }
    int[] starts = new int[runs.size() + 1];
    for (int k = 0; k < runs.size(); k++) {
      starts[k] = runs.get(k);
    }
    starts[runs.size()] = sorted.size();
    return new RowList(
        runs.stream().map(i -> sorted.get(i).file()).toArray(String[]::new),
        runs.stream().mapToInt(i -> sorted.get(i).line()).toArray(),
        starts);
  }

  private static boolean follows(RowRef row, RowRef next) {
    return row.file().equals(next.file()) && next.line() == row.line() + 1;
  }

  @Override
  public RowRef get(int index) {
    if (index < 0 || index >= size()) {
      throw new IndexOutOfBoundsException(index);
    }
    int found = Arrays.binarySearch(starts, index);
    int run = found >= 0 ? found : -found - 2;
    return new RowRef(files[run], firstLines[run] + index - starts[run]);
  }

  @Override
  public int size() {
    return starts[starts.length - 1];
  }
}
