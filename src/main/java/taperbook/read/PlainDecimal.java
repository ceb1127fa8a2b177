package taperbook.check;

import java.util.Optional;

/**
 * Reads numbers of the plainest kind, digits with or without a decimal point in the middle and a
 * minus before them, as loggers write them: the same double as {@code Double.parseDouble}, several
 * times as fast.
 *
 * <p>Digits up to 2^53 and powers of ten up to 10^22 are doubles themselves, so that their quotient
 * is rounded once, which is what reading a decimal correctly asks for.
 *
 * @see <a href="https://doi.org/10.1145/93542.93557">Clinger, How to read floating point numbers
 *     accurately, PLDI 1990</a>
 */
final class PlainDecimal {
  /** So many digits are below 2^53 whatever they are. */
  private static final int MOST_DIGITS = 15;

  private PlainDecimal() {}

  /** The number, if the text is of that kind. */
  static Optional<CellNumber> read(String text) {
    return read(text, 0, text.length());
  }

  /** The number in a stretch of a text, if it is of that kind. */
  static Optional<CellNumber> read(String text, int from, int to) {
    boolean minus = from < to && text.charAt(from) == '-';
    int begin = minus ? from + 1 : from;
    if (to - begin > MOST_DIGITS + 1) {
      return Optional.empty();
    }
    int point = -1;
    long digits = 0;
    for (int i = begin; i < to; i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digits = 10 * digits + (c - '0');
      } else if (c == '.' && point < 0 && i > begin && i + 1 < to) {
        point = i;
      } else {
        return Optional.empty();
      }
    }
    int count = to - begin - (point < 0 ? 0 : 1);
    if (count == 0 || count > MOST_DIGITS) {
      return Optional.empty();
    }
    int decimals = point < 0 ? 0 : to - point - 1;
    double value = digits / CellNumber.powerOfTen(decimals);
    return Optional.of(new CellNumber(minus ? -value : value, -decimals));
  }
}
