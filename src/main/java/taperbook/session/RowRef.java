package taperbook.session;

/**
 * The row of an input file that contains a reading or a fact, printed as {@code file:line}.
 *
 * @param file path relative to the project folder, with {@code /}
 * @param line line number from 1
 */
public record RowRef(String file, int line) implements Comparable<RowRef> {
  public RowRef {
    if (file.isEmpty() || line < 1) {
      throw new IllegalArgumentException("no such row: " + file + ":" + line);
    }
  }

  /**
   * Written out, as is {@link #hashCode}, because the implementation that a record generates is
   * linked at run time, which is slow.
   */
  @Override
  public boolean equals(Object other) {
    return other instanceof RowRef row && line == row.line && file.equals(row.file);
  }

  @Override
  public int hashCode() {
    return 31 * file.hashCode() + line;
  }

  @Override
  public int compareTo(RowRef other) {
    int byFile = file.compareTo(other.file);
    return byFile != 0 ? byFile : Integer.compare(line, other.line);
  }

  @Override
  public String toString() {
    return file + ":" + line;
  }
}
