package taperbook.session;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.RandomAccess;

/**
 * Sorted input rows without duplicates, stored as contiguous runs of lines, so that the thousands
 * of rows behind a number from a log take as much memory as two.
 */
final class RowList extends AbstractList<RowRef> implements RandomAccess {
  private final String[] files;
  private final int[] firstLines;

  /** Index of the first row of each run, followed by the total number of rows. */
  private final int[] starts;

  private RowList(String[] files, int[] firstLines, int[] starts) {
    this.files = files;
    this.firstLines = firstLines;
    this.starts = starts;
  }

  /** Returns the rows, sorted, without duplicates. */
  static RowList of(Collection<RowRef> rows) {
    if (rows instanceof RowList list) {
      return list;
    }
    List<RowRef> sorted = sorted(rows);
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

  /** Returns the rows of sorted runs. */
  static RowList ofRuns(List<RowRun> runs) {
    int[] starts = new int[runs.size() + 1];
    for (int k = 0; k < runs.size(); k++) {
      starts[k + 1] = starts[k] + runs.get(k).lastLine() - runs.get(k).firstLine() + 1;
    }
    return new RowList(
        runs.stream().map(RowRun::file).toArray(String[]::new),
        runs.stream().mapToInt(RowRun::firstLine).toArray(),
        starts);
  }

  /** Returns the contiguous runs of lines, in order. */
  List<RowRun> runs() {
    List<RowRun> runs = new ArrayList<>();
    for (int k = 0; k < files.length; k++) {
      runs.add(new RowRun(files[k], firstLines[k], firstLines[k] + starts[k + 1] - starts[k] - 1));
    }
    return runs;
  }

  /**
   * Avoids sorting if the rows are already sorted, which is the usual case and involves thousands
   * of rows.
   */
  private static List<RowRef> sorted(Collection<RowRef> rows) {
    List<RowRef> list = List.copyOf(rows);
    for (int i = 1; i < list.size(); i++) {
      if (list.get(i - 1).compareTo(list.get(i)) >= 0) {
        return list.stream().sorted().distinct().toList();
      }
    }
    return list;
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
