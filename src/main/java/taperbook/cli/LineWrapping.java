package taperbook.cli;

import java.util.ArrayList;
import java.util.List;

/** Breaks a line at its spaces so that it fits a terminal. */
public final class LineWrapping {
  /** Below this many characters beside the indent, a line is left to the terminal. */
  private static final int LEAST = 20;

  private LineWrapping() {}

  /**
   * The line in pieces that fit, where words allow it; what is aligned by two spaces or more stays
   * so in the first piece.
   *
   * @param line the line, with its own indent
   * @param hanging what each further piece begins with
   * @param width characters in a line
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
   * Where a piece ends: at its last space; but where the last column has no room of its own, before
   * that column.
   */
  private static int cut(String line, int hanging, int width) {
    int gap = line.lastIndexOf("  ", width);
    return gap > Math.max(hanging, width / 2) ? gap : line.lastIndexOf(' ', width);
  }

  /**
   * What the further pieces of a line begin with: room up to its last column, if columns are set
   * apart by two spaces or more, and two spaces more than its own indent otherwise.
   *
   * @param width characters in a line
   */
  static String hanging(String line, int width) {
    int indent = line.length() - line.stripLeading().length();
    int gap = line.lastIndexOf("  ", width);
    int column = gap <= indent ? indent + 2 : gap + 2;
    return " ".repeat(width - column < LEAST ? indent + 2 : column);
  }
}
