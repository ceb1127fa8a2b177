package taperbook.prosecheck;

import java.util.List;
import java.util.Locale;

/** Numbers in words or digits. */
final class NumberWords {
  private static final List<String> ONES =
      List.of(
          "zero",
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");
  private static final List<String> TENS =
      List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");

  private static final String TENS_WORD = "(?:" + String.join("|", TENS) + ")";
  private static final String UP_TO_99 =
      "(?:"
          + TENS_WORD
          + "(?:[- ](?:"
          + String.join("|", ONES.subList(1, 10))
          + "))?|"
          + longestFirst()
          + ")";

  /**
   * Regular expression for a number in words, up to 999, with an optional half; for
   * case-insensitive use.
   */
  static final String WORDS =
      "(?:(?:(?:an?|one|two|three|four|five|six|seven|eight|nine) hundred(?: and "
          + UP_TO_99
          + ")?|"
          + UP_TO_99
          + ")(?: and a half)?)";

  /**
   * Regular expression for a number in digits: thousands separated by commas or no-break spaces, a
   * point for decimals.
   */
  static final String DIGITS =
      "(?:\\d{1,3}(?:[,\\u00a0\\u202f]\\d{3}){1,4}(?:\\.\\d{1,9})?|\\d{1,9}(?:[.,]\\d{1,9})?)";

  private NumberWords() {}

  private static String longestFirst() {
    return String.join(
        "|", ONES.stream().sorted((a, b) -> Integer.compare(b.length(), a.length())).toList());
  }

  static boolean isWords(String written) {
    return Character.isLetter(written.charAt(0));
  }

  /** Returns the value of a number in words or digits. */
  static double value(String written) {
    if (isWords(written)) {
      return inWords(written.toLowerCase(Locale.ROOT));
    }
    return Double.parseDouble(plain(written));
  }

  /** Returns the value of one unit of the last digit. */
  static double step(String written) {
    if (isWords(written)) {
      return written.toLowerCase(Locale.ROOT).endsWith("half") ? 0.5 : 1;
    }
    String plain = plain(written);
    int point = plain.indexOf('.');
    return point < 0 ? 1 : Math.pow(10, point + 1 - plain.length());
  }

  private static String plain(String digits) {
    String grouped = digits.replace('\u2212', '-');
    String whole =
        grouped.matches("-?\\d{1,3}(?:[,\\u00a0\\u202f]\\d{3})+(?:\\.\\d+)?")
            ? grouped.replaceAll("[,\\u00a0\\u202f]", "")
            : grouped;
    return whole.replace(',', '.');
  }

  private static double inWords(String words) {
    double sum = 0;
    for (String word : words.split("[- ]", -1)) {
      if (word.equals("hundred")) {
        sum = Math.max(1, sum) * 100;
      } else if (word.equals("half")) {
        sum += 0.5;
      } else if (TENS.contains(word)) {
        sum += 20 + 10 * TENS.indexOf(word);
      } else if (ONES.contains(word)) {
        sum += ONES.indexOf(word);
      }
    }
    return sum;
  }
}
