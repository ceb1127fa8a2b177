package taperbook.input.csv;

/** Finds out what parts the cells of a CSV file, from its header. */
final class DelimiterDetector {
  private static final String CANDIDATES = ",;\t";

  private DelimiterDetector() {}

  /**
   * The candidate that occurs most often in the first line with text, outside quotes; of equals the
   * comma before the semicolon before the tab.
   */
  static char of(String text) {
    int[] counts = new int[CANDIDATES.length()];
    boolean quoted = false;
    boolean begun = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && LineCounter.isLineEnd(c) && begun) {
        break;
      } else if (!quoted && CANDIDATES.indexOf(c) >= 0) {
        counts[CANDIDATES.indexOf(c)]++;
      }
      begun |= !Character.isWhitespace(c);
    }
    int best = 0;
    for (int i = 1; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return CANDIDATES.charAt(best);
  }
}
