package taperbook.output;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Unit;

/**
 * Keeps a value and its unit on one line: replaces a plain space between them with a non-breaking
 * one. If the unit contains a slash, at which browsers and the PDF library would also break, {@code
 * 171 Wh/km} becomes {@code <span class="unit">…</span>}.
 */
final class NonBreakingUnits {
  private static final Pattern VALUE =
      Pattern.compile(
          "(?:[\u22120-9.,]+\u00a0)?\\b(?:k?Wh|kW|km|mi|m)/(?:100\u00a0km|km|mi|h|s|kWh\\b|%)");

  private static final Set<String> SYMBOLS =
      Arrays.stream(Unit.values())
          .map(NumberFormatter::name)
          .filter(name -> !name.isEmpty() && name.indexOf('/') < 0)
          .collect(Collectors.toUnmodifiableSet());

  private static final int LONGEST_SYMBOL =
      SYMBOLS.stream().mapToInt(String::length).max().orElse(0);

  /** Elements whose text is left unchanged. */
  private static final List<String> LEFT = List.of("style", "script", "title", "svg", "pre");

  private final String page;
  private final StringBuilder out;

  /** Names of elements that are known to have no further end tag. */
  private final Set<String> unclosed = new HashSet<>();

  private NonBreakingUnits(String page) {
    this.page = page;
    this.out = new StringBuilder(page.length() + page.length() / 16);
  }

  /** Returns the page with non-breaking values. */
  static String kept(String page) {
    NonBreakingUnits units = new NonBreakingUnits(page);
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
    if (indexOf('/', from, to) < 0) {
      spaced(from, to);
      return;
    }
    Matcher values = VALUE.matcher(page).region(from, to).useTransparentBounds(true);
    int copied = from;
    while (values.find()) {
      spaced(copied, values.start());
      out.append("<span class=\"unit\">");
      out.append(page, values.start(), values.end()).append("</span>");
      copied = values.end();
    }
    spaced(copied, to);
  }

  /** Copies text with a non-breaking space between each amount and its unit. */
  private void spaced(int from, int to) {
    int copied = from;
    for (int at = indexOf(' ', from, to); at >= 0; at = indexOf(' ', at + 1, to)) {
      if (at > from && isDigit(page.charAt(at - 1)) && beginsSymbol(at + 1, to)) {
        out.append(page, copied, at).append('\u00a0');
        copied = at + 1;
      }
    }
    out.append(page, copied, to);
  }

  /** As {@code String.indexOf}, but bounded by an end: a page may have many tags and few spaces. */
  private int indexOf(char wanted, int from, int to) {
    for (int i = from; i < to; i++) {
      if (page.charAt(i) == wanted) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Returns true if a unit starts there and the word ends with it. */
  private boolean beginsSymbol(int from, int to) {
    int end = from;
    while (end < to && !endsWord(page.charAt(end))) {
      end++;
      if (end - from > LONGEST_SYMBOL) {
        return false;
      }
    }
    return SYMBOLS.contains(page.substring(from, end));
  }

  private static boolean endsWord(char c) {
    return Character.isWhitespace(c) || ".,;:!?)&\u00a0".indexOf(c) >= 0;
  }

  /** Returns the end of a tag, including the content of an element that is left unchanged. */
  private int endOfTag(int tag) {
    for (String name : LEFT) {
      if (page.startsWith(name, tag + 1) && !unclosed.contains(name)) {
        String close = "</" + name + ">";
        int end = page.indexOf(close, tag);
        if (end >= 0) {
          return end + close.length();
        }
        unclosed.add(name);
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
