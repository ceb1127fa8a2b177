package taperbook.session;

import java.util.List;

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

  /** Returns the rows of the given runs, which must be in order and must not touch each other. */
  public static List<RowRef> rows(List<RowRun> runs) {
    return RowList.ofRuns(runs);
  }
}
