package taperbook.format;

import java.util.ArrayList;
import java.util.List;

/**
 * A label with placeholders, split once so that filling it only concatenates.
 *
 * @param key its name
 * @param texts the text before, between and after the placeholders, one more than there are
 *     placeholders
 * @param places the index of the value in each placeholder, from 0
 * @param valueCount number of values it takes
 */
record LabelPattern(String key, List<String> texts, List<Integer> places, int valueCount) {
  LabelPattern {
    texts = List.copyOf(texts);
    places = List.copyOf(places);
  }

  /** Splits the text of a properties file entry. */
  static LabelPattern of(String key, String written) {
    List<String> texts = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    int from = 0;
    for (int open = written.indexOf('{'); open >= 0; open = written.indexOf('{', from)) {
      int close = written.indexOf('}', open);
      places.add(number(key, written, open, close));
      texts.add(written.substring(from, open));
      from = close + 1;
    }
    texts.add(written.substring(from));
    if (texts.stream().anyMatch(t -> t.indexOf('}') >= 0)) {
      throw wrongBraces(key, written);
    }
    int count = (int) places.stream().distinct().count();
    if (places.stream().anyMatch(p -> p >= count)) {
      throw wrongBraces(key, written);
    }
    return new LabelPattern(key, texts, places, count);
  }

  /** Only a single digit is permitted: ten values are more than a label needs. */
  private static int number(String key, String written, int open, int close) {
    char digit = close == open + 2 ? written.charAt(open + 1) : ' ';
    if (digit < '0' || digit > '9') {
      throw wrongBraces(key, written);
    }
    return digit - '0';
  }

  private static IllegalStateException wrongBraces(String key, String written) {
    return new IllegalStateException(
        "label " + key + " must number its braces {0}, {1} and so on: " + written);
  }

  /** Returns the label with its values. */
  String filled(Object... values) {
    if (values.length != valueCount) {
      throw new IllegalStateException(
          "label " + key + " takes " + valueCount + " values, not " + values.length);
    }
    if (valueCount == 0) {
      return texts.get(0);
    }
    StringBuilder filled = new StringBuilder(texts.get(0));
    for (int k = 0; k < places.size(); k++) {
      filled.append(values[places.get(k)]).append(texts.get(k + 1));
    }
    return filled.toString();
  }
}
