package taperbook.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A contiguous run of rows of one input file.
 *
 * @param file path relative to the project folder, with {@code /}
 * @param firstLine line number of its first row, from 1
 * @param lastLine line number of its last row
 */
public record RowRun(String file, int firstLine, int lastLine) {
  /** Checks the order. */
  public RowRun {
    if (firstLine < 1 || lastLine < firstLine) {
      throw new IllegalArgumentException(file + ":" + firstLine + "-" + lastLine);
    }
  }

  /** Returns the runs that cover the given rows, in order. */
  public static List<RowRun> of(List<RowRef> rows) {
    return RowList.of(rows).runs();
  }

  /** Returns the rows, sorted, without duplicates, in as little memory as their runs. */
  public static List<RowRef> packed(List<RowRef> rows) {
    return RowList.of(rows);
  }

  /**
   * Returns the rows of both lists, sorted, without duplicates, in as little memory as their runs.
   */
  public static List<RowRef> union(List<RowRef> one, List<RowRef> other) {
    List<RowRun> sorted =
        Stream.of(one, other)
            .flatMap(rows -> of(rows).stream())
            .sorted(Comparator.comparing(RowRun::file).thenComparingInt(RowRun::firstLine))
            .toList();
    List<RowRun> merged = new ArrayList<>();
    for (RowRun run : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && merged.get(last).reaches(run)) {
        RowRun before = merged.get(last);
        int end = Math.max(before.lastLine(), run.lastLine());
        merged.set(last, new RowRun(before.file(), before.firstLine(), end));
      } else {
        merged.add(run);
      }
    }
    return rows(merged);
  }

  private boolean reaches(RowRun next) {
    return file.equals(next.file) && next.firstLine <= lastLine + 1;
  }

  /** Returns the rows of the given runs, which must be in order and must not touch each other. */
  public static List<RowRef> rows(List<RowRun> runs) {
    return RowList.ofRuns(runs);
  }
}
