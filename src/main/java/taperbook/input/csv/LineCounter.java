package taperbook.input.csv;

/**
 * Converts indices of a text to lines. CR, LF and CRLF each end a line. Indices must be passed in
 * ascending order, so that the text is scanned once.
 */
final class LineCounter {
  private final String text;
  private int position;
  private int line = 1;

  LineCounter(String text) {
    this.text = text;
  }

  /**
   * Returns the line, from 1, of the first character at or after an index that is not a line end.
   */
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

  /** Returns true if the character at an index is the last one of a line end. */
  static boolean endsLine(String text, int place) {
    char c = text.charAt(place);
    boolean pairFollows = place + 1 < text.length() && text.charAt(place + 1) == '\n';
    return c == '\n' || (c == '\r' && !pairFollows);
  }

  static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
