package taperbook.output.data;

import taperbook.format.PlainDigits;

/** Numbers for data files. */
final class Digits {
  /** Beyond ten digits lies only the noise of floating point. */
  private static final int SIGNIFICANT = 10;

  private Digits() {}

  static String plain(double value) {
    return PlainDigits.of(value, SIGNIFICANT);
  }
}
