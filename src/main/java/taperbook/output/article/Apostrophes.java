package taperbook.output.article;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Replaces the apostrophes of a page: {@code the car’s} for {@code the car's}. Leaves code,
 * scripts, styles, comments, attributes and straight quotes around words unchanged.
 */
final class Apostrophes {
  private static final Pattern MARKUP =
      Pattern.compile(
          "<(code|pre|script|style)\\b.*?</\\1>|<!--.*?-->|<[^>]*+>",
          Pattern.DOTALL | Pattern.CASE_INSENSITIVE);
  private static final Pattern IN_WORD =
      Pattern.compile("(?<=[\\p{L}\\p{N}])'(?=\\p{L})|^'(?=s\\b)");
  private static final Pattern AFTER_PLURAL = Pattern.compile("(?<=s)'(?!\\p{L})");
  private static final Pattern OPENING_QUOTE = Pattern.compile("(?<![\\p{L}\\p{N}])'");
  private static final String CURLY = "\u2019";

  private Apostrophes() {}

  /** Returns the page with curly apostrophes. */
  static String set(String html) {
    StringBuilder page = new StringBuilder(html.length());
    Matcher markup = MARKUP.matcher(html);
    int end = 0;
    while (markup.find()) {
      page.append(text(html.substring(end, markup.start()))).append(markup.group());
      end = markup.end();
    }
    return page.append(text(html.substring(end))).toString();
  }

  private static String text(String escaped) {
    String plain = escaped.replace("&#39;", "'");
    String words = IN_WORD.matcher(plain).replaceAll(CURLY);
    // If a quote opens, an apostrophe after an s may be the closing quote.
    return OPENING_QUOTE.matcher(words).find()
        ? words
        : AFTER_PLURAL.matcher(words).replaceAll(CURLY);
  }
}
