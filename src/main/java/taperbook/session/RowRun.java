package taperbook.session;

import java.util.List;

/**
 * An unbroken run of rows of one input file.
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

  /** The runs of some rows, in order. */
  public static List<RowRun> of(List<RowRef> rows) {
    return RowList.of(rows).runs();
  }

  /** The rows of some runs, which must be in order and apart from each other. */
  public static List<RowRef> rows(List<RowRun> runs) {
    return RowList.ofRuns(runs);
  }
}
