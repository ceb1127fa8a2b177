package taperbook.diagnostics;

import java.util.Locale;

/**
 * Escapes text of external origin, such as a name, a path or a cell, for one line of a terminal:
 * invisible characters with an effect are replaced by visible escapes.
 *
 * <p>These are controls (C0, DEL and C1, including escape, tab and line ends), format characters
 * (including all directional and zero-width marks), line and paragraph separators, and unpaired
 * surrogates.
 *
 * @see <a href="https://www.unicode.org/reports/tr36/">Unicode Technical Report 36, 2.10 and 3</a>
 */
public final class Printable {
  private Printable() {}

  /** Returns the text with an escape such as <code>&#92;u001b</code> for each such character. */
  public static String of(String text) {
    if (text.codePoints().noneMatch(Printable::isHidden)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (!isHidden(c)) {
                shown.appendCodePoint(c);
              } else if (Character.isBmpCodePoint(c)) {
                shown.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                shown.append(String.format(Locale.ROOT, "\\u{%x}", c));
              }
            });
    return shown.toString();
  }

  /** As {@link #of}, for each line separately. */
  public static String ofLines(String text) {
    StringBuilder shown = new StringBuilder();
    int begin = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', begin)) {
      shown.append(of(text.substring(begin, end))).append('\n');
      begin = end + 1;
    }
    return shown.append(of(text.substring(begin))).toString();
  }

  private static boolean isHidden(int character) {
    int type = Character.getType(character);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }
}
