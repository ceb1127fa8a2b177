package taperbook.diagnostics;

/** Quotes the content of an input file for use inside a {@link Problem}. */
public final class Quoted {
  private static final int MAX_CHARACTERS = 60;

  private Quoted() {}

  /**
   * Returns the text in double quotes on one line: line ends and other control characters become
   * spaces, and text beyond 60 characters is replaced by an ellipsis.
   */
  public static String of(String text) {
    StringBuilder shown = new StringBuilder("\"");
    int end = text.length();
    if (text.codePointCount(0, end) > MAX_CHARACTERS) {
      end = text.offsetByCodePoints(0, MAX_CHARACTERS);
    }
    text.substring(0, end)
        .codePoints()
        .map(c -> Character.isISOControl(c) ? ' ' : c)
        .forEach(shown::appendCodePoint);
    if (end < text.length()) {
      shown.append('\u2026');
    }
    return shown.append('"').toString();
  }
}
