package taperbook.input.csv;

/** Detects the cell delimiter of a CSV file from its header. */
final class DelimiterDetector {
  private static final String CANDIDATES = ",;\t";

  private DelimiterDetector() {}

  /**
   * Returns the candidate that occurs most often in the first line with text, outside quotes; for
   * equal counts comma, semicolon, tab in this order of preference.
   */
  static char of(String text) {
    int[] counts = new int[CANDIDATES.length()];
    boolean quoted = false;
    boolean started = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && LineCounter.isLineEnd(c) && started) {
        break;
      } else if (!quoted && CANDIDATES.indexOf(c) >= 0) {
        counts[CANDIDATES.indexOf(c)]++;
      }
      started |= !Character.isWhitespace(c);
    }
    int best = 0;
    for (int i = 1; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return CANDIDATES.charAt(best);
  }
}
