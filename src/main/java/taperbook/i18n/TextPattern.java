package taperbook.i18n;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A text with places for values, split once so that formatting only joins strings.
 *
 * @param key the key of the text
 * @param texts the texts before, between and after the places, one more than there are places
 * @param places the number of the value in each place, from 0
 * @param valueCount the number of different values
 */
record TextPattern(String key, List<String> texts, List<Integer> places, int valueCount) {
  private static final Pattern NUMBER = Pattern.compile("0|[1-9][0-9]?");

  TextPattern {
    texts = List.copyOf(texts);
    places = List.copyOf(places);
  }

  /**
   * Parses a text as it is in a properties file.
   *
   * @throws IllegalStateException if its braces are not closed or not numbered from 0 on
   */
  static TextPattern parse(String key, String written) {
    List<String> texts = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < written.length(); i++) {
      char c = written.charAt(i);
      if (c != '{' && c != '}') {
        text.append(c);
      } else if (written.startsWith("{{", i) || written.startsWith("}}", i)) {
        text.append(c);
        i++;
      } else {
        int close = written.indexOf('}', i);
        places.add(number(key, written, i, close));
        texts.add(text.toString());
        text.setLength(0);
        i = close;
      }
    }
    texts.add(text.toString());
    int count = (int) places.stream().distinct().count();
    if (places.stream().anyMatch(p -> p >= count)) {
      throw wrongBraces(key, written);
    }
    return new TextPattern(key, texts, places, count);
  }

  private static int number(String key, String written, int open, int close) {
    String digits = close > open ? written.substring(open + 1, close) : "";
    if (!NUMBER.matcher(digits).matches()) {
      throw wrongBraces(key, written);
    }
    return Integer.parseInt(digits);
  }

  private static IllegalStateException wrongBraces(String key, String written) {
    return new IllegalStateException(
        "text " + key + " must number its braces {0}, {1} and so on: " + written);
  }

  /** Returns the text with values in its places. */
  String format(@Nullable Object... values) {
    if (values.length != valueCount) {
      throw new IllegalStateException(
          "text " + key + " takes " + valueCount + " values, not " + values.length);
    }
    if (places.isEmpty()) {
      return texts.get(0);
    }
    StringBuilder filled = new StringBuilder(texts.get(0));
    for (int k = 0; k < places.size(); k++) {
      filled.append(printed(values[places.get(k)])).append(texts.get(k + 1));
    }
    return filled.toString();
  }

  /** Returns a path with {@code /} on each system, as the names in messages and inputs have. */
  private static @Nullable Object printed(@Nullable Object value) {
    return value instanceof Path path
        ? path.toString().replace(path.getFileSystem().getSeparator(), "/")
        : value;
  }
}
