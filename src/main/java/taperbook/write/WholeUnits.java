package taperbook.write;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps a value and its unit in one line where the unit has a stroke in it, at which browsers and
 * the PDF library would break: {@code 171 Wh/km} becomes {@code <span class="unit">…</span>}.
 */
final class WholeUnits {
  private static final Pattern VALUE =
      Pattern.compile(
          "(?:[\u22120-9.,]+\u00a0)?\\b(?:k?Wh|km|mi|m)/(?:100\u00a0km|km|mi|h|s|kWh\\b|%)");

  /** Elements whose text is left as it is. */
  private static final List<String> LEFT = List.of("style", "script", "title", "svg");

  private final String page;
  private final StringBuilder out;

  private WholeUnits(String page) {
    this.page = page;
    this.out = new StringBuilder(page.length() + page.length() / 16);
  }

  /** The page with such values marked. */
  static String kept(String page) {
    WholeUnits units = new WholeUnits(page);
    int at = 0;
    while (at < page.length()) {
      int tag = page.indexOf('<', at);
      int to = tag < 0 ? page.length() : tag;
      units.text(at, to);
      at = tag < 0 ? to : units.endOfTag(tag);
      units.out.append(page, to, at);
    }
    return units.out.toString();
  }

  /** Copies text between tags with its values marked. */
  private void text(int from, int to) {
    int stroke = page.indexOf('/', from);
    if (stroke < 0 || stroke >= to) {
      out.append(page, from, to);
      return;
    }
    Matcher values = VALUE.matcher(page).region(from, to).useTransparentBounds(true);
    int copied = from;
    while (values.find()) {
      out.append(page, copied, values.start()).append("<span class=\"unit\">");
      out.append(page, values.start(), values.end()).append("</span>");
      copied = values.end();
    }
    out.append(page, copied, to);
  }

  /** Where a tag ends, with what is left as it is behind it. */
  private int endOfTag(int tag) {
    for (String name : LEFT) {
      if (page.startsWith(name, tag + 1)) {
        String close = "</" + name + ">";
        int end = page.indexOf(close, tag);
        if (end >= 0) {
          return end + close.length();
        }
      }
    }
    char quote = 0;
    for (int i = tag + 1; i < page.length(); i++) {
      char c = page.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '>') {
        return i + 1;
      }
    }
    return tag + 1;
  }
}
