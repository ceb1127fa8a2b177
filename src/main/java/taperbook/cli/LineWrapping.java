package taperbook.cli;

import java.util.ArrayList;
import java.util.List;

/** Wraps lines at spaces to fit a terminal. */
public final class LineWrapping {
  /** If fewer characters than this remain beside the indent, wrapping is left to the terminal. */
  private static final int LEAST = 20;

  private LineWrapping() {}

  /**
   * Splits a line into pieces that fit, as far as words permit. Columns that are aligned by two or
   * more spaces stay aligned in the first piece.
   *
   * @param line the line, with its own indent
   * @param hanging prefix of each further piece
   * @param width line width, characters
   */
  public static List<String> lines(String line, String hanging, int width) {
    List<String> pieces = new ArrayList<>();
    String rest = line;
    int begin = line.length() - line.stripLeading().length();
    while (rest.length() > width && width - hanging.length() >= LEAST) {
      int cut = cut(rest, hanging.length(), width);
      if (cut <= Math.max(begin, hanging.length())) {
        cut = rest.indexOf(' ', width);
      }
      if (cut < 0) {
        break;
      }
      pieces.add(rest.substring(0, cut).stripTrailing());
      rest = hanging + rest.substring(cut).strip();
      begin = hanging.length();
    }
    pieces.add(rest);
    return pieces;
  }

  /**
   * Returns where a piece ends: at its last space, or before the last column if no part of that
   * column fits.
   */
  private static int cut(String line, int hanging, int width) {
    int gap = line.lastIndexOf("  ", width);
    return gap > Math.max(hanging, width / 2) ? gap : line.lastIndexOf(' ', width);
  }

  /**
   * Returns the prefix of the further pieces of a line: spaces up to its last column if columns are
   * separated by two or more spaces, otherwise its own indent plus two spaces.
   *
   * @param width line width, characters
   */
  static String hanging(String line, int width) {
    int indent = line.length() - line.stripLeading().length();
    int gap = line.lastIndexOf("  ", width);
    int column = gap <= indent ? indent + 2 : gap + 2;
    return " ".repeat(width - column < LEAST ? indent + 2 : column);
  }
}
