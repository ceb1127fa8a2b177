package taperbook.input.csv;

/**
 * Tells the line of a place in a text. CR, LF and CRLF each end a line. Places must be asked for in
 * rising order, so that a file is walked through once.
 */
final class LineCounter {
  private final String text;
  private int position;
  private int line = 1;

  LineCounter(String text) {
    this.text = text;
  }

  /** The line, from 1, that the first character at or after a place that ends no line stands on. */
  int lineOfTextAt(int place) {
    int target = place;
    while (target < text.length() && isLineEnd(text.charAt(target))) {
      target++;
    }
    while (position < target) {
      if (endsLine(text, position)) {
        line++;
      }
      position++;
    }
    return line;
  }

  /** True if the character at a place is the last one of a line's end. */
  static boolean endsLine(String text, int place) {
    char c = text.charAt(place);
    boolean pairFollows = place + 1 < text.length() && text.charAt(place + 1) == '\n';
    return c == '\n' || (c == '\r' && !pairFollows);
  }

  static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
