package taperbook.diagnostics;

/**
 * A location in an input file.
 *
 * @param file path relative to the project folder, with {@code /}
 * @param line line number from 1, or 0 for the file as a whole
 * @param column column number from 1, or 0 for the line as a whole; in a CSV file the number of the
 *     cell in its row, elsewhere of the character in its line
 */
public record SourceLocation(String file, int line, int column) {
  /** Checks that the numbers are not negative and that a column has a line. */
  public SourceLocation {
    if (file.isEmpty() || line < 0 || column < 0 || (column > 0 && line == 0)) {
      throw new IllegalArgumentException("no such place: " + file + ":" + line + ":" + column);
    }
  }

  /** Returns the location of the file as a whole. */
  public static SourceLocation file(String file) {
    return new SourceLocation(file, 0, 0);
  }

  /** Returns the location of a whole line of a file. */
  public static SourceLocation line(String file, int line) {
    return new SourceLocation(file, line, 0);
  }

  @Override
  public String toString() {
    if (line == 0) {
      return file;
    }
    return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}
