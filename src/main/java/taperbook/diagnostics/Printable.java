package taperbook.diagnostics;

import java.util.Locale;

/**
 * Makes a text from elsewhere, such as a name, a path or a cell, fit for one line of a terminal:
 * characters that are not seen but do something become visible escapes.
 *
 * <p>These are controls (C0, DEL and C1, with escape, tab and line ends), format characters (with
 * all marks of direction and all of no width), separators of lines and paragraphs, and surrogates
 * without their other half.
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

  /** As {@link #of}, of each line by itself. */
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
